package halfwidth.value;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number typed with its standard uncertainty, as in {@code 0.83 ± 0.02}, {@code 103.2 mm +/- 0.5
 * mm} or {@code (103.2 ± 0.5) mm}.
 *
 * @param value what stands before the sign
 * @param uncertainty what stands behind it
 */
record PlusMinus(String value, String uncertainty) {
    private static final String SIGN = "±|\\+/-|\\+-";
    private static final Pattern BOTH = Pattern.compile("(.*?)\\s*(?:" + SIGN + ")\\s*(.*)");
    private static final Pattern BRACKETS =
            Pattern.compile("\\((.*?)\\s*(?:" + SIGN + ")\\s*(.*)\\)\\s*(.*)");

    /** The two parts; empty if there is no sign between them. */
    static Optional<PlusMinus> split(String typed) {
        String text = Figure.plain(typed);
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches()) {
            String unit = brackets.group(3);
            return Optional.of(
                    new PlusMinus(
                            spaced(brackets.group(1), unit), spaced(brackets.group(2), unit)));
        }
        Matcher both = BOTH.matcher(text);
        return both.matches()
                ? Optional.of(new PlusMinus(both.group(1), both.group(2)))
                : Optional.empty();
    }

    private static String spaced(String number, String unit) {
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** A number that was typed without a unit, with or without an uncertainty, put into a unit. */
    static String inUnit(String typed, String unit) {
        return split(typed).isPresent() ? "(" + typed.strip() + ") " + unit : typed + " " + unit;
    }

    /** The value with its uncertainty, both in the unit of the field. */
    Entry read(Kind kind, String unit, String typed) {
        if (split(uncertainty).isPresent()) {
            throw new EntryRefused(typed + " has ± twice; type one standard uncertainty");
        }
        Entry value = Entry.read(kind, unit, this.value);
        Entry size = size(kind, unit, withUnitOfValue(unit));
        return new Entry(typed, value.value(), value.understood())
                .with((Double) size.value(), size.understood());
    }

    /**
     * Reads a standard uncertainty by itself.
     *
     * @throws EntryRefused if it is not understood or not above 0
     */
    static Entry size(Kind kind, String unit, String typed) {
        Entry size =
                kind instanceof Kind.Number
                        ? new NumberReader(Unit.of(unit)).difference(typed)
                        : DdmReader.size(typed);
        if (!((Double) size.value() > 0)) {
            throw new EntryRefused(
                    typed
                            + " is no standard uncertainty; type one that is above 0, or none"
                            + " where it is not known");
        }
        return size;
    }

    /**
     * What stands behind the sign, with its unit. One typed with the value alone holds for both;
     * one typed behind the sign alone could hold for both or for the uncertainty.
     */
    private String withUnitOfValue(String unit) {
        String ofValue = unitOf(value);
        String own = unitOf(uncertainty);
        boolean known = Unit.find(ofValue).isPresent();
        if (own.isEmpty() && !ofValue.isEmpty()) {
            if (!known) {
                throw new EntryRefused(
                        uncertainty + " behind ± has no unit; type it too, as in ± 1 " + unit);
            }
            return uncertainty + " " + ofValue;
        }
        boolean ofField = Unit.find(own).filter(Unit.of(unit)::equals).isPresent();
        if (ofValue.isEmpty() && !own.isEmpty() && !ofField) {
            throw new EntryRefused(
                    String.format(
                            "%s stands behind ± alone; type it behind both, as in (%s ± %s) %1$s,"
                                    + " or give the uncertainty in %s",
                            own,
                            value,
                            uncertainty.substring(0, uncertainty.length() - own.length()).strip(),
                            unit.equals("1") ? "plain numbers" : unit));
        }
        return uncertainty;
    }

    private static String unitOf(String number) {
        return Figure.first(number, () -> "a number on both sides of ±").rest();
    }
}
