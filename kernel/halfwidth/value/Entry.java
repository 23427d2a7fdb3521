package halfwidth.value;

import java.io.Serializable;
import java.util.Optional;

/**
 * One entry as typed and as understood.
 *
 * @param typed exactly what was typed
 * @param value {@code Double} (in the field's unit), {@code Integer}, {@code String}, {@code
 *     LocalDate} or {@code NamedArray}, by the field's kind
 * @param understood how it is read back to the person, with its unit, as in {@code 0.155 DDM, 150
 *     Hz (150.0 µA)}; a converted number is rounded to one place more than was typed, and followed
 *     by that
 * @param uncertainty the standard uncertainty of a {@code Double}, in its unit; empty if none is
 *     known
 */
public record Entry(
        String typed, Serializable value, String understood, Optional<Double> uncertainty) {

    /** An entry whose uncertainty is not known. */
    public Entry(String typed, Serializable value, String understood) {
        this(typed, value, understood, Optional.empty());
    }

    /**
     * Reads what a person typed: it is understood or refused, never guessed.
     *
     * @param unit the unit that the value is wanted in, for a number or a count; "1" for a plain
     *     one
     * @throws EntryRefused if it is wrong or can be read in more than one way
     * @throws IllegalArgumentException if {@code unit} is not known
     */
    public static Entry read(Kind kind, String unit, String typed) {
        boolean real = takesUncertainty(kind);
        Optional<PlusMinus> both = real ? PlusMinus.split(typed) : Optional.empty();
        if (both.isPresent()) {
            return both.get().read(kind, unit, typed);
        }
        if (kind instanceof Kind.Number) {
            return new NumberReader(Unit.of(unit)).read(typed);
        }
        if (kind instanceof Kind.Ddm) {
            return DdmReader.read(typed);
        }
        if (kind instanceof Kind.DdmSize) {
            return DdmReader.size(typed);
        }
        if (kind instanceof Kind.Count) {
            return WordReader.count(unit, typed);
        }
        if (kind instanceof Kind.Choice choice) {
            return WordReader.choice(choice.options(), typed);
        }
        if (kind instanceof Kind.Array array) {
            return ArrayReader.read(array, typed);
        }
        return kind instanceof Kind.Date ? DateReader.read(typed) : WordReader.text(typed);
    }

    /** Whether an entry of this kind may have a standard uncertainty: not what is counted. */
    public static boolean takesUncertainty(Kind kind) {
        return kind instanceof Kind.Number
                || kind instanceof Kind.Ddm
                || kind instanceof Kind.DdmSize;
    }

    /**
     * Reads a standard uncertainty that is stated apart from its value.
     *
     * @param unit the unit of the value; the uncertainty may be typed in another
     * @return the uncertainty as a value in {@code unit}
     * @throws EntryRefused if the kind takes none, or it is not understood or not above 0
     */
    public static Entry uncertainty(Kind kind, String unit, String typed) {
        if (!takesUncertainty(kind)) {
            throw new EntryRefused(
                    "this is no measured number, so it has no standard uncertainty; leave it out");
        }
        return PlusMinus.size(kind, unit, Figure.plain(typed));
    }

    /** A number that was typed without a unit, with or without a ±, as typed in a unit. */
    public static String inUnit(String typed, String unit) {
        return PlusMinus.inUnit(typed, unit);
    }

    /**
     * The same entry with a standard uncertainty.
     *
     * @param standardUncertainty in the unit of the value
     * @param words how it is read back to the person, with its unit
     */
    public Entry with(double standardUncertainty, String words) {
        return new Entry(
                typed,
                value,
                understood + " ± " + words + " (standard uncertainty)",
                Optional.of(standardUncertainty));
    }
}
