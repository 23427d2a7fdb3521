package halfwidth.value;

import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The values a field accepts.
 *
 * @param least smallest, in {@code unit}; none if empty
 * @param most largest, in {@code unit}; none if empty
 * @param unit the unit of the field, "1" for a plain number
 */
public record Range(Optional<Double> least, Optional<Double> most, String unit) {
    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if a limit is NaN or {@code least} is above {@code most}
     */
    public Range {
        double low = least.orElse(Double.NEGATIVE_INFINITY);
        double high = most.orElse(Double.POSITIVE_INFINITY);
        if (!(low <= high)) {
            throw new IllegalArgumentException("least " + low + " must be <= most " + high);
        }
    }

    /**
     * Returns the entry if its value lies within the limits, both included.
     *
     * @throws EntryRefused if it lies outside, naming the limits
     * @throws IllegalArgumentException if there are limits and its value is no number
     */
    public Entry check(Entry entry) {
        if (least.isEmpty() && most.isEmpty()) {
            return entry;
        }
        if (!(entry.value() instanceof Number number)) {
            throw new IllegalArgumentException(
                    "value " + entry.value() + " must be a number, to be compared with limits");
        }
        if (!holds(number.doubleValue())) {
            throw new EntryRefused(entry.understood() + " must be " + limits() + advice(entry));
        }
        return entry;
    }

    private boolean holds(double value) {
        return value >= least.orElse(value) && value <= most.orElse(value);
    }

    /** What to type if another unit was meant, as it may be where the value is far outside. */
    private String advice(Entry outside) {
        String text = Figure.plain(outside.typed());
        if (!(outside.value() instanceof Double value)
                || holds(value / 2)
                || holds(value * 2)
                || !Figure.first(text, () -> unit).rest().isEmpty()) {
            return "";
        }
        String fitting =
                Unit.of(unit).alternatives().stream()
                        .filter(other -> holdsIn(other, value))
                        .map(other -> text + " " + other)
                        .collect(Collectors.joining(" or "));
        return fitting.isEmpty() ? "" : "; if another unit is meant, type " + fitting;
    }

    private boolean holdsIn(String other, double value) {
        try {
            return holds(Unit.of(other).convert(value, Unit.of(unit)));
        } catch (IllegalArgumentException tooLarge) {
            return false;
        }
    }

    private String limits() {
        if (least.isEmpty()) {
            return "at most " + shown(most.orElseThrow());
        }
        String low = "at least " + shown(least.get());
        return most.isEmpty() ? low : low + " and at most " + shown(most.get());
    }

    private String shown(double limit) {
        String number = Decimal.grouped(Decimal.print(limit));
        return unit.isEmpty() || unit.equals("1") ? number : number + " " + unit;
    }
}
