package halfwidth.method;

/**
 * A method of the physics library as it is written.
 *
 * @param type the full name of the type that declares it
 * @param signature its name with the types of its parameters, as in {@code next(CutRule)}
 * @param documentation what is written about it, as plain text: paragraphs, then a line for each
 *     parameter, for what it returns and for what it throws
 * @param source its Java; for a part of a record that is nowhere written out, the record's head
 * @param file its file under the sources, as in {@code halfwidth/localizer/cut/CutRule.java}
 * @param line the line of that file where {@code source} starts, 1-based
 */
public record MethodSource(
        String type,
        String signature,
        String documentation,
        String source,
        String file,
        int line) {}
