package halfwidth.search;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Text as the search compares it: lower case, without accents, in words. */
final class Words {
    private Words() {}

    /**
     * The words of a text; a variable's name gives its parts too: phaseConstant, phase, constant.
     */
    static List<String> of(String text) {
        return Arrays.stream(text.split("[^\\p{L}\\p{M}\\p{N}°%]+"))
                .filter(word -> !word.isEmpty())
                .map(Words::plain)
                .toList();
    }

    /** The parts of a variable's name. */
    static List<String> ofName(String name) {
        return of(name + " " + name.replaceAll("(?<=[\\p{Ll}\\p{N}])(?=\\p{Lu})", " "));
    }

    private static String plain(String word) {
        return Normalizer.normalize(word, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT);
    }
}
