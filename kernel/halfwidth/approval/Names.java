package halfwidth.approval;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;

/** Compares what people typed as their names, and tells a stated reason from a mere mark. */
public final class Names {
    private static final int FEWEST_WORDS = 3;

    private Names() {}

    /** Whether two names are the same but for case, spaces and punctuation. */
    public static boolean same(String one, String other) {
        return folded(one).equals(folded(other));
    }

    /** Whether anything in it names somebody. */
    static boolean isName(String text) {
        return !folded(text).isEmpty();
    }

    /**
     * A name without case, spaces and punctuation, as it is compared; "" if it names nobody. Upper
     * case first, since some letters, as ß, have no single capital.
     */
    public static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]", "");
    }

    /** Whether it is a sentence that somebody can be asked about: three words at least. */
    static boolean isReason(String text) {
        return Arrays.stream(text.strip().split("\\s+"))
                        .filter(word -> word.matches(".*\\p{L}.*"))
                        .count()
                >= FEWEST_WORDS;
    }
}
