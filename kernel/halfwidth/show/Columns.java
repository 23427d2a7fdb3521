package halfwidth.show;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Rows of cells in aligned columns of plain text. The first column takes what room is left and
 * wraps; a row may carry notes, which are wrapped below it. A row may also be a label with a text,
 * which takes the room of all other columns and wraps.
 */
final class Columns {
    private static final int GAP = 2;
    private static final int LEAST_FIRST = 16;
    private static final int LEAST_TEXT = 36;

    /** A row; one without cells is a heading, which its notes hold. */
    private record Row(List<String> cells, boolean isText, List<String> notes) {
        boolean hasCell(int column) {
            return !cells.isEmpty() && (column == 0 || !isText);
        }
    }

    private final int width;
    private final String alignment;
    private final List<Row> rows = new ArrayList<>();

    /**
     * @param width of the whole, in character cells
     * @param alignment a letter for each column: l for left, r for right
     */
    Columns(int width, String alignment) {
        this.width = width;
        this.alignment = alignment;
    }

    void row(List<String> cells, List<String> notes) {
        add(cells, false, notes);
    }

    void text(String label, String text, List<String> notes) {
        add(List.of(label, text), true, notes);
    }

    /** A heading of the rows below it, which takes no room of the columns. */
    void heading(String words) {
        rows.add(new Row(List.of(), false, List.of(Line.safe(words))));
    }

    private void add(List<String> cells, boolean isText, List<String> notes) {
        rows.add(
                new Row(
                        cells.stream().map(Line::safe).toList(),
                        isText,
                        notes.stream().filter(note -> !note.isEmpty()).toList()));
    }

    List<String> lines() {
        int[] widths = IntStream.range(0, alignment.length()).map(this::widest).toArray();
        int rest = IntStream.of(widths).skip(1).filter(w -> w > 0).map(w -> w + GAP).sum();
        int others = rows.stream().anyMatch(Row::isText) ? Math.max(rest, LEAST_TEXT + GAP) : rest;
        widths[0] = Math.min(widths[0], Math.max(LEAST_FIRST, width - others));
        return rows.stream().flatMap(row -> lines(row, widths).stream()).toList();
    }

    private int widest(int column) {
        return rows.stream()
                .filter(row -> row.hasCell(column))
                .mapToInt(row -> Line.width(row.cells().get(column)))
                .max()
                .orElse(0);
    }

    private List<String> lines(Row row, int[] widths) {
        if (row.cells().isEmpty()) {
            return Line.wrap("-- " + row.notes().get(0) + " --", width);
        }
        List<String> label = Line.wrap(row.cells().get(0), widths[0]);
        List<String> beside = row.isText() ? text(row, widths[0]) : List.of(cells(row, widths));
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(label.size(), beside.size()); i++) {
            String left = i < label.size() ? label.get(i) : "";
            String right = i < beside.size() ? beside.get(i) : "";
            lines.add((Line.padRight(left, widths[0]) + right).stripTrailing());
        }
        for (String note : row.notes()) {
            Line.wrap(note, width - 4).forEach(line -> lines.add("    " + line));
        }
        return lines;
    }

    private List<String> text(Row row, int label) {
        return Line.wrap(row.cells().get(1), width - label - GAP).stream()
                .map(line -> " ".repeat(GAP) + line)
                .toList();
    }

    private String cells(Row row, int[] widths) {
        return IntStream.range(1, widths.length)
                .filter(column -> widths[column] > 0)
                .mapToObj(column -> padded(row, column, widths[column]))
                .collect(Collectors.joining());
    }

    private String padded(Row row, int column, int room) {
        String cell = row.cells().get(column);
        String gap = " ".repeat(GAP);
        return alignment.charAt(column) == 'r'
                ? gap + Line.padLeft(cell, room)
                : gap + Line.padRight(cell, room);
    }
}
