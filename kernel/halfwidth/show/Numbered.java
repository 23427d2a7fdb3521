package halfwidth.show;

import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Step;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The numbers put into a formula, so that a reviewer can check it without leafing back. */
record Numbered(Sheet sheet) {
    /** Texts and comments, which only look like code. */
    private static final Pattern NOT_CODE =
            Pattern.compile(
                    "\"(?:\\\\.|[^\"\\\\])*\"|'(?:\\\\.|[^'\\\\])*'|//[^\\n]*|/\\*.*?\\*/",
                    Pattern.DOTALL);

    /** A word that is not a member of something and not a method. */
    private static final Pattern NAME =
            Pattern.compile("(?<![\\w.$])([A-Za-z_$][\\w$]*)(?!\\s*\\()");

    /** The inputs and earlier values that a step names, with their numbers; "" if none. */
    String used(Step step) {
        Map<String, String> known = knownBefore(step);
        String code = NOT_CODE.matcher(step.code()).replaceAll(" ");
        return NAME.matcher(code)
                .results()
                .map(match -> match.group(1))
                .distinct()
                .filter(name -> !name.equals(step.name()) && known.containsKey(name))
                .map(name -> name + " = " + known.get(name))
                .collect(Collectors.joining(", "));
    }

    private Map<String, String> knownBefore(Step step) {
        Map<String, String> known = new LinkedHashMap<>();
        sheet.entries().forEach((name, entry) -> known.put(name, entry.understood()));
        for (Ran ran : sheet.run().steps()) {
            if (ran.step().line() >= step.line()) {
                break;
            }
            value(ran).ifPresent(value -> known.put(ran.step().name(), value));
        }
        return known;
    }

    private static Optional<String> value(Ran ran) {
        return ran.outcome() instanceof Outcome.Done done && !ran.step().name().isEmpty()
                ? Values.small(done.value(), ran.step().unit())
                : Optional.empty();
    }
}
