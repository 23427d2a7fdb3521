package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.run.Step;
import java.io.Serializable;
import java.util.Optional;

/**
 * One top-level statement of a page.
 *
 * @param line the line where its code starts, after leading comments, 1-based
 * @param firstLine the line where its text starts
 * @param text its text with leading comments, without the trailing one
 * @param comment its trailing comment, "" if none
 * @param check whether it stands in a check block
 * @param hidden whether the kernel made it (an input's declaration), so that no step shows it
 */
record Statement(
        int line, int firstLine, String text, String comment, boolean check, boolean hidden)
        implements Serializable {

    /**
     * The step a reader sees. For a number, the comment is its unit and then, after a colon, a
     * note; for any other statement the comment is all note.
     */
    Step step(int index, Optional<CompiledStatement> compiled) {
        String name =
                compiled.filter(one -> one.entryPoint().isPresent())
                        .map(CompiledStatement::name)
                        .orElse("");
        boolean number = compiled.isPresent() && compiled.get().number() && !check;
        int colon = comment.indexOf(':');
        String unit = !number ? "" : colon < 0 ? comment : comment.substring(0, colon).strip();
        String note = !number ? comment : colon < 0 ? "" : comment.substring(colon + 1).strip();
        return new Step(index, line, text, name, unit, note);
    }

    /** The same statement with another text on the same lines, as it was compiled. */
    Statement reading(String compiled) {
        return new Statement(line, firstLine, compiled, comment, check, hidden);
    }

    /** The page's line at an offset into {@code text}; beyond its ends, the nearest line. */
    int lineAt(int offset) {
        String before = text.substring(0, Math.max(0, Math.min(offset, text.length())));
        return firstLine + (int) before.chars().filter(c -> c == '\n').count();
    }

    /** A failure of this statement as a whole. */
    Outcome.Failed failed(String reason, String detail, String advice) {
        return new Outcome.Failed(line, reason, detail, advice);
    }
}
