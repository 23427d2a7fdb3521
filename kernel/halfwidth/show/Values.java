package halfwidth.show;

import halfwidth.run.Shown;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/** Values in one line of words. */
final class Values {
    /** What is shown for a value that a step left out on purpose, as an empty optional. */
    static final String NONE = "none";

    /** What stands for a number that is missing. */
    private static final String MISSING = "–";

    /** More numbers than this are not all written out in a line. */
    private static final int SERIES = 8;

    private Values() {}

    static String words(Shown value) {
        if (value instanceof Shown.Real real) {
            return Numbers.brief(real.value());
        }
        if (value instanceof Shown.Measured measured) {
            return Numbers.measured(measured.value(), measured.standardUncertainty());
        }
        if (value instanceof Shown.Whole whole) {
            return Long.toString(whole.value());
        }
        if (value instanceof Shown.Flag flag) {
            return flag.value() ? "true" : "false";
        }
        if (value instanceof Shown.Words words) {
            return words.text();
        }
        if (value instanceof Shown.Advice advice) {
            return advice.action().words();
        }
        if (value instanceof Shown.Grid grid) {
            return "table of %s rows".formatted(grid.rows().size() + grid.left());
        }
        return value instanceof Shown.Picture picture ? picture.title() : NONE;
    }

    /** Whether a table is no more than a row of numbers, as an array is, some of them missing. */
    static boolean isSeries(Shown.Grid grid) {
        return grid.columns().size() == 1
                && grid.rows().stream().allMatch(row -> isNumber(row.get(0)));
    }

    private static boolean isNumber(Serializable cell) {
        return cell == null || cell instanceof Double;
    }

    private static String number(Serializable cell) {
        return cell instanceof Double number ? Numbers.brief(number) : MISSING;
    }

    /** The first numbers of a series and the last, as in {@code 0, 1.5, … 2.25 in (41 values)}. */
    static String series(Shown.Grid grid, String unit) {
        List<String> numbers = grid.rows().stream().map(row -> number(row.get(0))).toList();
        boolean whole = grid.left() == 0;
        if (whole && numbers.size() <= SERIES) {
            return withUnit(String.join(", ", numbers), unit);
        }
        String last = whole ? " " + numbers.get(numbers.size() - 1) : "";
        String shown = String.join(", ", numbers.subList(0, SERIES - 2)) + ", …" + last;
        return withUnit(shown, unit) + " (%s values)".formatted(numbers.size() + grid.left());
    }

    /** Any value in one line, the numbers of a series by the first and the last. */
    static String summary(Shown value) {
        return value instanceof Shown.Grid grid && isSeries(grid) ? series(grid, "") : words(value);
    }

    /** A value with its unit, as in {@code 1.25 in} or {@code (4.19 ± 0.10) °/in}. */
    static String words(Shown value, String unit) {
        if (value instanceof Shown.Nothing) {
            return NONE;
        }
        boolean measured = value instanceof Shown.Measured && !unit(unit).isEmpty();
        return withUnit(measured ? "(" + words(value) + ")" : words(value), unit);
    }

    /** A value with its unit, as in {@code 1.25 in} or {@code 12°}. */
    static String withUnit(String value, String unit) {
        if (value.isEmpty() || unit.isEmpty() || unit.equals("1")) {
            return value;
        }
        return unit.startsWith("°") && unit.length() == 1 ? value + unit : value + " " + unit;
    }

    /** A unit as written beside a number: that of a plain number is not. */
    static String unit(String unit) {
        return unit.equals("1") ? "" : unit;
    }

    /** A single number, truth value or short text with its unit; empty for anything larger. */
    static Optional<String> small(Shown value, String unit) {
        boolean small =
                value instanceof Shown.Real
                        || value instanceof Shown.Measured
                        || value instanceof Shown.Whole
                        || value instanceof Shown.Flag
                        || value instanceof Shown.Words words && words.text().length() <= 24;
        return small ? Optional.of(words(value, unit)) : Optional.empty();
    }
}
