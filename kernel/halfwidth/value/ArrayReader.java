package halfwidth.value;

import halfwidth.localizer.array.ArrayFile;
import java.io.UncheckedIOException;

/** Reads which array is meant, and whether it can be had: a step would refuse it far too late. */
final class ArrayReader {
    private static final String NONE = "none";

    private ArrayReader() {}

    static Entry read(Kind.Array kind, String typed) {
        String name = typed.strip();
        if (kind.orNone() && name.equalsIgnoreCase(NONE)) {
            return new Entry(typed, NONE, NONE);
        }
        try {
            ArrayFile.named(name);
            return new Entry(typed, name, name);
        } catch (IllegalArgumentException | UncheckedIOException unusable) {
            String other = kind.orNone() ? "another array, or none" : "another array";
            throw new EntryRefused(unusable.getMessage() + "; correct it or type " + other);
        }
    }
}
