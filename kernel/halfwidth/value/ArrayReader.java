package halfwidth.value;

import halfwidth.localizer.array.NamedArray;
import java.io.UncheckedIOException;

/** Reads which array is meant, and whether it can be had: a step would refuse it far too late. */
final class ArrayReader {
    private ArrayReader() {}

    static Entry read(Kind.Array kind, String typed) {
        String name = typed.strip();
        if (kind.orNone() && name.equalsIgnoreCase(NamedArray.NONE.name())) {
            return new Entry(typed, NamedArray.NONE, NamedArray.NONE.name());
        }
        if (!kind.files() && !NamedArray.isShipped(name)) {
            throw new EntryRefused(
                    "array file \""
                            + name
                            + "\" is not read, since a record names it and nobody here");
        }
        try {
            return new Entry(typed, NamedArray.of(name), name);
        } catch (IllegalArgumentException | UncheckedIOException unusable) {
            String other = kind.orNone() ? "another array, or none" : "another array";
            throw new EntryRefused(unusable.getMessage() + "; correct it or type " + other);
        }
    }
}
