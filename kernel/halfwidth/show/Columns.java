package halfwidth.show;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Rows of cells in aligned columns of plain text. The first column takes what room is left and
 * wraps; a row may carry notes, which are wrapped below it.
 */
final class Columns {
    private static final int GAP = 2;
    private static final int LEAST_FIRST = 16;

    private record Row(List<String> cells, List<String> notes) {}

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
        rows.add(
                new Row(
                        cells.stream().map(Line::safe).toList(),
                        notes.stream().filter(note -> !note.isEmpty()).toList()));
    }

    List<String> lines() {
        int[] widths = IntStream.range(0, alignment.length()).map(this::widest).toArray();
        int rest = IntStream.of(widths).skip(1).filter(w -> w > 0).map(w -> w + GAP).sum();
        widths[0] = Math.min(widths[0], Math.max(LEAST_FIRST, width - rest));
        return rows.stream().flatMap(row -> lines(row, widths).stream()).toList();
    }

    private int widest(int column) {
        return rows.stream().mapToInt(row -> Line.width(row.cells().get(column))).max().orElse(0);
    }

    private List<String> lines(Row row, int[] widths) {
        List<String> label = Line.wrap(row.cells().get(0), widths[0]);
        List<String> lines = new ArrayList<>();
        String others =
                IntStream.range(1, widths.length)
                        .filter(column -> widths[column] > 0)
                        .mapToObj(column -> padded(row, column, widths[column]))
                        .collect(Collectors.joining());
        String first = label.isEmpty() ? "" : label.get(0);
        lines.add((Line.padRight(first, widths[0]) + others).stripTrailing());
        label.stream().skip(1).forEach(lines::add);
        for (String note : row.notes()) {
            Line.wrap(note, width - 4).forEach(line -> lines.add("    " + line));
        }
        return lines;
    }

    private String padded(Row row, int column, int room) {
        String cell = row.cells().get(column);
        String gap = " ".repeat(GAP);
        return alignment.charAt(column) == 'r'
                ? gap + Line.padLeft(cell, room)
                : gap + Line.padRight(cell, room);
    }
}
