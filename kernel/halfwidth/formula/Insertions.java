package halfwidth.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** What is to be put into a statement's text. */
final class Insertions {
    /**
     * A text to put in; what belongs outside comes first where two begin together.
     *
     * @param row whether it serves rows
     */
    private record Insertion(long at, String text, boolean row) {}

    private final String text;
    private final int start;
    private final List<Insertion> insertions = new ArrayList<>();

    /**
     * @param start where {@code text} begins in what was parsed
     */
    Insertions(String text, int start) {
        this.text = text;
        this.start = start;
    }

    void add(long at, String inserted, boolean row) {
        insertions.add(new Insertion(at, inserted, row));
    }

    /**
     * The text with all in it, on the same lines as before.
     *
     * @param notes the class that takes the notes
     * @param withRows whether to put in what serves rows
     */
    String made(String notes, boolean withRows) {
        StringBuilder noting = new StringBuilder(text);
        // From the end, so that what is not yet reached stays where it was. Sorting is stable, and
        // the outer part was noted first: put in last, it comes to stand before the inner one.
        List<Insertion> backwards = new ArrayList<>(insertions);
        Collections.reverse(backwards);
        backwards.removeIf(one -> one.row() && !withRows);
        backwards.sort(Comparator.comparingLong(Insertion::at).reversed());
        for (Insertion one : backwards) {
            noting.insert((int) one.at() - start, one.text().formatted(notes));
        }
        return noting.toString();
    }
}
