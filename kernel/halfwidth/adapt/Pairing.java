package halfwidth.adapt;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import com.github.difflib.patch.DeltaType;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Finds which removed and added lines are one line changed. */
final class Pairing {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_]+|\\s+|.", Pattern.DOTALL);

    /** Two lines that share less of their text than this have nothing to do with each other. */
    private static final double ALIKE = 0.5;

    /** More pairs than this would take too long to weigh. */
    private static final int MOST_PAIRS = 2500;

    private Pairing() {}

    static List<String> words(String line) {
        return WORD.matcher(line).results().map(MatchResult::group).toList();
    }

    /**
     * Pairs lines so that, in order, the pairs have as much in common as they can.
     *
     * @return the place in {@code now} of each line of {@code old}, -1 where it has no partner
     */
    static int[] of(List<String> old, List<String> now) {
        int[] partners = new int[old.size()];
        Arrays.fill(partners, -1);
        if ((long) old.size() * now.size() > MOST_PAIRS) {
            return partners;
        }
        double[][] alike = alike(old, now);
        double[][] best = best(alike, old.size(), now.size());
        int j = 0;
        for (int i = 0; i < old.size(); i++) {
            while (j < now.size() && best[i][j] == best[i][j + 1]) {
                j++;
            }
            if (j < now.size() && best[i][j] > best[i + 1][j]) {
                partners[i] = j++;
            }
        }
        return partners;
    }

    /** What the lines from the i-th old and the j-th new one on can have in common at most. */
    private static double[][] best(double[][] alike, int olds, int nows) {
        double[][] best = new double[olds + 1][nows + 1];
        for (int i = olds - 1; i >= 0; i--) {
            for (int j = nows - 1; j >= 0; j--) {
                double paired = alike[i][j] < ALIKE ? 0 : alike[i][j] + best[i + 1][j + 1];
                best[i][j] = Math.max(paired, Math.max(best[i + 1][j], best[i][j + 1]));
            }
        }
        return best;
    }

    private static double[][] alike(List<String> old, List<String> now) {
        double[][] alike = new double[old.size()][now.size()];
        for (int i = 0; i < old.size(); i++) {
            for (int j = 0; j < now.size(); j++) {
                alike[i][j] = alike(old.get(i), now.get(j));
            }
        }
        return alike;
    }

    /** The share of two lines' letters that they have in common, in order. */
    private static double alike(String old, String now) {
        int common = 0;
        for (AbstractDelta<String> delta :
                DiffUtils.diff(words(old), words(now), true).getDeltas()) {
            if (delta.getType() == DeltaType.EQUAL) {
                common += String.join("", delta.getSource().getLines()).length();
            }
        }
        return 2.0 * common / Math.max(1, old.length() + now.length());
    }
}
