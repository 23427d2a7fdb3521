package halfwidth.adapt;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import com.github.difflib.patch.DeltaType;
import java.util.ArrayList;
import java.util.List;

/**
 * What an adapted page has otherwise than the shipped one, line beside line. Line ends do not
 * count.
 *
 * @param rows every line of both, in order
 */
public record Difference(List<Row> rows) {

    /** What became of a line. */
    public enum Kind {
        KEPT,
        CHANGED,
        REMOVED,
        ADDED
    }

    /**
     * A run of text within a line.
     *
     * @param changed whether the other side has it otherwise
     */
    public record Piece(String text, boolean changed) {}

    /**
     * A line of one side.
     *
     * @param line its number, 1-based; 0 where this side has none
     */
    public record Side(int line, List<Piece> pieces) {
        static final Side NONE = new Side(0, List.of());

        public Side {
            pieces = List.copyOf(pieces);
        }

        /** The line's text. */
        public String text() {
            StringBuilder text = new StringBuilder();
            pieces.forEach(piece -> text.append(piece.text()));
            return text.toString();
        }

        private static Side whole(int line, String text, boolean changed) {
            return new Side(line, text.isEmpty() ? List.of() : List.of(new Piece(text, changed)));
        }
    }

    /** A line of the shipped page, of the adapted one, or of both. */
    public record Row(Kind kind, Side shipped, Side adapted) {}

    public Difference {
        rows = List.copyOf(rows);
    }

    /** Compares two texts. */
    public static Difference of(String shipped, String adapted) {
        List<Row> rows = new ArrayList<>();
        for (AbstractDelta<String> delta :
                DiffUtils.diff(lines(shipped), lines(adapted), true).getDeltas()) {
            add(delta, rows);
        }
        return new Difference(rows);
    }

    /** Whether both say the same. */
    public boolean isNone() {
        return rows.stream().allMatch(row -> row.kind() == Kind.KEPT);
    }

    /**
     * Which lines differ: {@code other than shipped at line 12, 20-22; shipped lines left out: 3}.
     */
    public String words() {
        List<String> spans = new ArrayList<>();
        int first = 0;
        int last = 0;
        for (Row row : rows) {
            int line = row.kind() == Kind.KEPT ? 0 : row.adapted().line();
            if (line > 0 && line == last + 1 && first > 0) {
                spans.remove(spans.size() - 1);
            } else if (line > 0) {
                first = line;
            }
            if (line > 0) {
                last = line;
                spans.add(first == last ? "" + first : first + "-" + last);
            }
        }
        long left = rows.stream().filter(row -> row.kind() == Kind.REMOVED).count();
        String others =
                spans.isEmpty() ? "" : "other than shipped at line " + String.join(", ", spans);
        String gone = left == 0 ? "" : "shipped lines left out: " + left;
        return others + (others.isEmpty() || gone.isEmpty() ? "" : "; ") + gone;
    }

    private static List<String> lines(String text) {
        PageText page = PageText.of(text);
        return page.count() == 0 ? List.of() : PageText.contents(page.whole());
    }

    private static void add(AbstractDelta<String> delta, List<Row> rows) {
        List<String> old = delta.getSource().getLines();
        List<String> now = delta.getTarget().getLines();
        int oldLine = delta.getSource().getPosition() + 1;
        int nowLine = delta.getTarget().getPosition() + 1;
        if (delta.getType() == DeltaType.EQUAL) {
            for (int i = 0; i < old.size(); i++) {
                rows.add(
                        new Row(
                                Kind.KEPT,
                                Side.whole(oldLine + i, old.get(i), false),
                                Side.whole(nowLine + i, now.get(i), false)));
            }
            return;
        }
        int j = 0;
        int[] partners = Pairing.of(old, now);
        for (int i = 0; i < old.size(); i++) {
            if (partners[i] < 0) {
                Side removed = Side.whole(oldLine + i, old.get(i), true);
                rows.add(new Row(Kind.REMOVED, removed, Side.NONE));
                continue;
            }
            for (; j < partners[i]; j++) {
                rows.add(added(nowLine + j, now.get(j)));
            }
            rows.add(changed(oldLine + i, old.get(i), nowLine + j, now.get(j)));
            j++;
        }
        for (; j < now.size(); j++) {
            rows.add(added(nowLine + j, now.get(j)));
        }
    }

    private static Row added(int line, String text) {
        return new Row(Kind.ADDED, Side.NONE, Side.whole(line, text, true));
    }

    private static Row changed(int oldLine, String old, int nowLine, String now) {
        List<Piece> before = new ArrayList<>();
        List<Piece> after = new ArrayList<>();
        for (AbstractDelta<String> delta :
                DiffUtils.diff(Pairing.words(old), Pairing.words(now), true).getDeltas()) {
            boolean changed = delta.getType() != DeltaType.EQUAL;
            append(before, delta.getSource().getLines(), changed);
            append(after, delta.getTarget().getLines(), changed);
        }
        return new Row(Kind.CHANGED, new Side(oldLine, before), new Side(nowLine, after));
    }

    private static void append(List<Piece> pieces, List<String> words, boolean changed) {
        if (!words.isEmpty()) {
            pieces.add(new Piece(String.join("", words), changed));
        }
    }
}
