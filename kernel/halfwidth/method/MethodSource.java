package halfwidth.method;

import java.util.List;

/**
 * A method of the physics library as it is written.
 *
 * @param type the full name of the type that declares it
 * @param signature its name with the types of its parameters, as in {@code next(CutRule)}
 * @param parameters its parameters, in order
 * @param documentation what is written about it, as plain text: paragraphs, then a line for each
 *     parameter, for what it returns and for what it throws
 * @param source its Java; for a part of a record that is nowhere written out, the record's head
 * @param file its file under the sources, as in {@code halfwidth/localizer/cut/CutRule.java}
 * @param line the line of that file where {@code source} starts, 1-based
 */
public record MethodSource(
        String type,
        String signature,
        List<Parameter> parameters,
        String documentation,
        String source,
        String file,
        int line) {
    public MethodSource {
        parameters = List.copyOf(parameters);
    }

    /**
     * A parameter.
     *
     * @param unit as its documentation states it; "" if it is no number
     */
    public record Parameter(String name, String unit) {}

    /** Its name alone, as it is called by. */
    public String name() {
        return signature.substring(0, signature.indexOf('('));
    }

    /** The name of an anchor for it, the same wherever it is shown. */
    public String anchor() {
        return "method-" + (type + "-" + signature).replaceAll("[^A-Za-z0-9]+", "-");
    }
}
