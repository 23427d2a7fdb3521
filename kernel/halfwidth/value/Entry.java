package halfwidth.value;

import java.io.Serializable;

/**
 * One entry as typed and as understood.
 *
 * @param typed exactly what was typed
 * @param value {@code Double} (in the field's unit), {@code Integer}, {@code String}, {@code
 *     LocalDate} or {@code NamedArray}, by the field's kind
 * @param understood how it is read back to the person, with its unit, as in {@code 0.155 DDM, 150
 *     Hz (150.0 µA)}; a converted number is rounded to ten digits and followed by what was typed
 */
public record Entry(String typed, Serializable value, String understood) {
    /**
     * Reads what a person typed: it is understood or refused, never guessed.
     *
     * @param unit the unit that the value is wanted in, for a number or a count; "1" for a plain
     *     one
     * @throws EntryRefused if it is wrong or can be read in more than one way
     * @throws IllegalArgumentException if {@code unit} is not known
     */
    public static Entry read(Kind kind, String unit, String typed) {
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
}
