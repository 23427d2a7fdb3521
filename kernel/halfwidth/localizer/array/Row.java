package halfwidth.localizer.array;

import java.math.BigDecimal;
import java.util.List;

/** One row of an array file, which knows where it stands to say so when it is refused. */
record Row(String source, long line, List<String> cells) {

    boolean isNote() {
        return cells.isEmpty() || cells.get(0).startsWith("#");
    }

    String first() {
        return cells.get(0);
    }

    String text(int column, String name) {
        if (column >= cells.size() || cells.get(column).isBlank()) {
            throw refusal(name + " must be given");
        }
        return cells.get(column);
    }

    double number(int column, String name) {
        String text = text(column, name);
        try {
            // Not Double.parseDouble, which also takes NaN, Infinity and the suffixes d and f.
            return new BigDecimal(text).doubleValue();
        } catch (NumberFormatException e) {
            throw refusal(name + " \"" + text + "\" must be a number with a decimal point");
        }
    }

    void requireCells(int most) {
        if (cells.size() > most) {
            throw refusal("row must have at most " + most + " cells, not " + cells.size());
        }
    }

    IllegalArgumentException refusal(String reason) {
        return new IllegalArgumentException(source + ", line " + line + ": " + reason);
    }
}
