package halfwidth.job;

import halfwidth.page.Field;
import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Where an input takes its value from.
 *
 * @param visit the visit of the other page; empty if there is none to take it from
 * @param finding what its last run found; empty if there is nothing to take
 * @param words where it came from and when, or why there is nothing to take
 */
public record Source(Optional<Visit> visit, Optional<Finding> finding, String words) {
    private static final MathContext READABLE = new MathContext(6);

    /** Digits of an uncertainty: JCGM 100:2008, 7.2.6, allows two at most. */
    private static final MathContext OF_UNCERTAINTY = new MathContext(2);

    /**
     * The value as the field reads it, without loss.
     *
     * @throws EntryRefused if the field does not accept it
     */
    Entry entry(Field field) {
        Finding taken = finding.orElseThrow();
        boolean measured = !field.unit().isEmpty() && !(field.kind() instanceof Kind.Count);
        if (!measured || taken.unit().isEmpty()) {
            return field.read(taken.value());
        }
        String typed = measured(taken.value(), taken.uncertainty(), taken.unit());
        String uncertainty = rounded(taken.uncertainty(), OF_UNCERTAINTY);
        String shown = measured(shown(taken, uncertainty), uncertainty, taken.unit());
        Entry exact = field.read(typed);
        String understood =
                field.completed(Entry.read(field.kind(), field.unit(), shown)).understood();
        return new Entry(typed, exact.value(), understood, exact.uncertainty());
    }

    /** As its page shows it; else as far as its uncertainty bears, or to six digits. */
    private static String shown(Finding taken, String uncertainty) {
        if (!taken.shown().isEmpty()) {
            return taken.shown();
        }
        if (uncertainty.isEmpty() || new BigDecimal(uncertainty).signum() == 0) {
            return rounded(taken.value(), READABLE);
        }
        int places = Math.max(0, new BigDecimal(uncertainty).scale());
        return new BigDecimal(taken.value()).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    private static String rounded(String number, MathContext digits) {
        return number.isEmpty()
                ? ""
                : Decimal.print(new BigDecimal(number).round(digits).doubleValue());
    }

    /** As one would type it; an uncertainty of nothing is none that a field accepts. */
    private static String measured(String number, String uncertainty, String unit) {
        boolean known = !uncertainty.isEmpty() && new BigDecimal(uncertainty).signum() > 0;
        String value = withUnit(number, unit);
        return known ? value + " ± " + withUnit(uncertainty, unit) : value;
    }

    private static String withUnit(String number, String unit) {
        return unit.equals("1") ? number : number + " " + unit;
    }
}
