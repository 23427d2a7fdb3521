package halfwidth.command;

import halfwidth.page.Page;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what is wrong with a step: where, why, the statement, and what to do. */
final class Faults {
    private Faults() {}

    static String of(Page page, Run.Ran ran) {
        if (ran.outcome() instanceof Outcome.Failed failed) {
            return place(page, failed.line())
                    + failed.reason()
                    + indented("      ", ran.step().code())
                    + indented("    ", failed.detail())
                    + indented("    ", failed.advice());
        }
        return place(page, ran.step().line())
                + whyNotRun(ran.outcome())
                + indented("      ", ran.step().code());
    }

    private static String whyNotRun(Outcome outcome) {
        if (outcome instanceof Outcome.Held held) {
            return "Not run: it needs what failed at line "
                    + held.lines().stream().map(String::valueOf).collect(Collectors.joining(", "))
                    + ".";
        }
        if (outcome instanceof Outcome.Skipped skipped) {
            return "Not filled in: optional (" + String.join(", ", skipped.names()) + ").";
        }
        return outcome instanceof Outcome.Waiting waiting
                ? "Waiting for " + String.join(", ", waiting.names()) + "."
                : "It ran.";
    }

    private static String indented(String indent, String text) {
        return Stream.of(text.split("\\R"))
                .filter(line -> !line.isBlank())
                .map(line -> System.lineSeparator() + indent + line.stripTrailing())
                .collect(Collectors.joining());
    }

    private static String place(Page page, int line) {
        return page.file() + ":" + line + ": ";
    }
}
