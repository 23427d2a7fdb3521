package halfwidth.page;

import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import halfwidth.value.Range;
import java.util.Optional;

/**
 * One declared input.
 *
 * @param line its line in the file, 1-based
 * @param name the Java variable it becomes
 * @param kind what may be typed into it
 * @param unit the unit its value has in the steps, "1" for a plain number, "" where a unit makes no
 *     sense
 * @param example the worked example's value as one would type it; never used as real data
 * @param standing a default, only for real constants, as one would type it
 * @param from the result of another page that it takes its value from, as in {@code
 *     lines/phase-constant#phaseConstant}
 * @param least smallest allowed value, in {@code unit}
 * @param most largest allowed value, in {@code unit}
 * @param label what a technician reads beside the field
 * @param uncertainty the standard uncertainty that whatever is typed has, by the instrument or
 *     source that the page prescribes, in {@code unit}; one that is typed goes first
 * @param optional whether it may be left blank: what needs it is then left out, not waited for
 */
public record Field(
        int line,
        String name,
        Kind kind,
        String unit,
        String example,
        Optional<String> standing,
        Optional<String> from,
        Optional<Double> least,
        Optional<Double> most,
        String label,
        Optional<Double> uncertainty,
        boolean optional) {

    /** A field that has to be filled in. */
    public Field(
            int line,
            String name,
            Kind kind,
            String unit,
            String example,
            Optional<String> standing,
            Optional<String> from,
            Optional<Double> least,
            Optional<Double> most,
            String label,
            Optional<Double> uncertainty) {
        this(
                line,
                name,
                kind,
                unit,
                example,
                standing,
                from,
                least,
                most,
                label,
                uncertainty,
                false);
    }

    /**
     * Reads what a person typed into this field.
     *
     * @throws halfwidth.value.EntryRefused if it is not understood or out of range
     */
    public Entry read(String typed) {
        return completed(range().check(Entry.read(kind, unit, typed)));
    }

    /** An entry with the uncertainty that the page states, if it has none of its own. */
    public Entry completed(Entry entry) {
        return entry.uncertainty().isPresent() || uncertainty.isEmpty()
                ? entry
                : entry.with(uncertainty.get(), byThePage(uncertainty.get()));
    }

    private String byThePage(double size) {
        String number = Decimal.print(size);
        return (unit.equals("1") ? number : number + " " + unit) + " by the page";
    }

    /** The values that it accepts. */
    public Range range() {
        return new Range(least, most, unit);
    }
}
