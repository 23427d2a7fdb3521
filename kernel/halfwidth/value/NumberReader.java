package halfwidth.value;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number with a unit, and converts it to the unit of its field. */
final class NumberReader {
    private static final Unit FOOT = Unit.of("ft");
    private static final Unit INCH = Unit.of("in");

    /** The place that a common fraction is worth, whose decimals may never end. */
    private static final double FINEST_FRACTION = 0.001;

    private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);
    private static final Pattern FEET_AND_MORE =
            Pattern.compile("(ft|foot|feet|'(?!')|′|’)\\s*(\\d.*)");

    /** A value in the unit that was typed, or in the field's if none was. */
    private record Measured(BigDecimal value, Unit unit) {}

    private final Unit unit;

    NumberReader(Unit unit) {
        this.unit = unit;
    }

    private String expected() {
        List<String> labels = unit.alternatives();
        return "a number, alone or with "
                + (labels.size() > 1 ? "one of " : "")
                + String.join(", ", labels);
    }

    Entry read(String typed) {
        return read(typed, false);
    }

    /** Reads how far two values are apart: 1 °C is then 1 K, not 274.15 K. */
    Entry difference(String typed) {
        return read(typed, true);
    }

    private Entry read(String typed, boolean difference) {
        String text = Figure.plain(typed);
        Figure figure = Figure.first(text, this::expected);
        Matcher feet = FEET_AND_MORE.matcher(figure.rest());
        Measured measured = feet.matches() ? feetAndInches(text, figure, feet) : single(figure);
        double value = converted(measured, text);
        if (difference) {
            value -= zero(measured);
        }
        boolean asTyped = measured.unit.equals(unit) && !feet.matches();
        String read = Decimal.grouped(shown(value, measured, asTyped, figure.fraction()));
        String withUnit = unit.equals(Unit.ONE) ? read : read + " " + unit.label();
        return new Entry(typed, value, asTyped ? withUnit : withUnit + " (" + text + " typed)");
    }

    private String shown(double value, Measured measured, boolean asTyped, boolean fraction) {
        if (asTyped && !fraction) {
            return Decimal.print(value);
        }
        double place = Math.max(measured.value.ulp().doubleValue(), fraction ? FINEST_FRACTION : 0);
        boolean exact = Decimal.brief(value).equals(Decimal.print(value));
        return asTyped && exact
                ? Decimal.print(value)
                : Decimal.converted(value, measured.unit.convert(place, unit) - zero(measured));
    }

    /** Where the typed unit's zero lies in the field's: elsewhere for degrees Celsius alone. */
    private double zero(Measured measured) {
        return measured.unit.convert(BigDecimal.ZERO, unit);
    }

    private Measured single(Figure figure) {
        if (figure.rest().isEmpty()) {
            return new Measured(figure.value(), unit);
        }
        return new Measured(figure.value(), unitTyped(figure.rest()));
    }

    private Unit unitTyped(String label) {
        Unit typed =
                Unit.find(label)
                        .orElseThrow(
                                () ->
                                        new EntryRefused(
                                                label
                                                        + " is not a known unit; type "
                                                        + expected()));
        if (!typed.sameQuantity(unit)) {
            throw new EntryRefused(
                    String.format(
                            "%s is typed where %s is expected; type %s",
                            label, unit.equals(Unit.ONE) ? "a ratio" : unit.label(), expected()));
        }
        return typed;
    }

    private Measured feetAndInches(String text, Figure feet, Matcher more) {
        String asIn = "whole feet and less than 12 inches, as in 1 ft 2 3/8 in";
        Figure inches = Figure.first(more.group(2), () -> asIn);
        boolean whole = !feet.fraction() && feet.value().stripTrailingZeros().scale() <= 0;
        boolean fits = inches.value().compareTo(INCHES_PER_FOOT) < 0;
        if (!whole || !fits || !Unit.find(inches.rest()).equals(Optional.of(INCH))) {
            throw new EntryRefused(text + " is not feet and inches; type " + asIn);
        }
        unitTyped(FOOT.label());
        BigDecimal size = feet.value().abs().multiply(INCHES_PER_FOOT).add(inches.value());
        return new Measured(text.startsWith("-") ? size.negate() : size, INCH);
    }

    private double converted(Measured measured, String text) {
        double value;
        try {
            value = measured.unit.convert(measured.value, unit);
        } catch (IllegalArgumentException tooLarge) {
            throw new EntryRefused(tooLarge.getMessage() + "; type a smaller number");
        }
        if (value == 0 && measured.value.signum() != 0) {
            throw new EntryRefused(text + " is too small in " + unit.label() + "; type 0");
        }
        return value;
    }
}
