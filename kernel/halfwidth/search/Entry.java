package halfwidth.search;

import java.util.List;

/**
 * A thing that can be found.
 *
 * @param own the words of its name and text
 * @param around those of its page's title and name
 */
record Entry(Hit hit, List<String> own, List<String> around) {
    private static final int KINDS = Hit.Kind.values().length;

    /** How well it fits: 0 where a word is missing, or where all are its page's alone. */
    int score(List<String> wanted) {
        int score = 0;
        boolean owns = false;
        for (String word : wanted) {
            int here = best(word, own);
            int fit = here > 0 ? 2 * here : best(word, around);
            if (fit == 0) {
                return 0;
            }
            owns |= here > 0;
            score += fit;
        }
        return owns ? score * KINDS / wanted.size() + KINDS - hit.kind().ordinal() : 0;
    }

    /** 3 for the word itself, 2 for a word that starts with it, 1 for one that has it within. */
    private static int best(String wanted, List<String> words) {
        int best = 0;
        for (String word : words) {
            int fit = word.equals(wanted) ? 3 : word.startsWith(wanted) ? 2 : 1;
            best = word.contains(wanted) ? Math.max(best, fit) : best;
        }
        return best;
    }
}
