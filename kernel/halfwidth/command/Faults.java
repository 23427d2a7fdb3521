package halfwidth.command;

import halfwidth.page.Page;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import java.util.stream.Collectors;

/** Says in one line what is wrong with a step. */
final class Faults {
    private Faults() {}

    static String line(Page page, Run.Ran ran) {
        if (ran.outcome() instanceof Outcome.Failed failed) {
            String detail = failed.detail().isEmpty() ? "" : " (" + failed.detail() + ")";
            return place(page, failed.line()) + failed.reason() + detail + " " + failed.advice();
        }
        if (ran.outcome() instanceof Outcome.Held held) {
            return place(page, ran.step().line())
                    + "Not run: it needs what failed at line "
                    + held.lines().stream().map(String::valueOf).collect(Collectors.joining(", "))
                    + ".";
        }
        if (ran.outcome() instanceof Outcome.Waiting waiting) {
            return place(page, ran.step().line())
                    + "Waiting for "
                    + String.join(", ", waiting.names())
                    + ".";
        }
        return place(page, ran.step().line()) + "It ran.";
    }

    private static String place(Page page, int line) {
        return page.file() + ":" + line + ": ";
    }
}
