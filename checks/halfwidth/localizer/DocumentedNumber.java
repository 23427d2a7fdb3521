package halfwidth.localizer;

import java.util.Set;

/**
 * A number that a public type takes, gives or holds, with the text of the tag that documents it.
 *
 * @param place the file, the line and the name
 * @param text "" where there is no such tag
 */
record DocumentedNumber(String place, String text) {
    private static final Set<String> NUMBERS =
            Set.of(
                    "double",
                    "double[]",
                    "double[][]",
                    "double...",
                    "int",
                    "int[]",
                    "List<Integer>",
                    "List<Long>",
                    "Estimate",
                    "OptionalDouble",
                    "Optional<Estimate>",
                    "Optional<Double>",
                    "List<Estimate>",
                    "List<Double>",
                    "Map<String, Double>",
                    "DoubleUnaryOperator",
                    "Range");

    static boolean isNumber(String type) {
        return NUMBERS.contains(type);
    }

    String problem() {
        return UnitTag.problem(text).isEmpty()
                ? ""
                : place + " " + UnitTag.problem(text) + ": " + text.replaceAll("\\s+", " ");
    }
}
