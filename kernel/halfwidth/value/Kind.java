package halfwidth.value;

import java.util.List;

/** What may be typed into a field or a cell. */
public sealed interface Kind {
    /** A number with a unit; {@code double} in the steps, in the declared unit. */
    record Number() implements Kind {}

    /** A whole number; {@code int} in the steps. */
    record Count() implements Kind {}

    /** A DDM, by tone, as a ratio, in thousandths or in µA; {@code double}, a signed ratio. */
    record Ddm() implements Kind {}

    /**
     * A size in DDM, such as a step or a tolerance; {@code double}, a ratio that is never negative.
     */
    record DdmSize() implements Kind {}

    /** One of several words; {@code String}. */
    record Choice(List<String> options) implements Kind {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /**
     * An array of antennas, by the name of a shipped one or the path of a file; {@link
     * halfwidth.localizer.array.NamedArray}.
     *
     * @param orNone whether {@code none} may be typed instead
     * @param files whether a path may be typed; not on a page that came in a record, since whoever
     *     wrote that would choose which file is read here
     */
    record Array(boolean orNone, boolean files) implements Kind {
        /** One that takes a path as well. */
        public Array(boolean orNone) {
            this(orNone, true);
        }
    }

    /** Any text; {@code String}. */
    record Text() implements Kind {}

    /** A calendar date; {@code java.time.LocalDate}. */
    record Date() implements Kind {}
}
