package halfwidth.decisions;

import halfwidth.page.Filled;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** A table as a crew types it, and what it then says: numbers in the unit of their column. */
record Rows(List<String> columns, List<List<Optional<Entry>>> cells) {
    static Rows of(Filled filled, String table) {
        Part.Readings declared =
                filled.page().readings().stream()
                        .filter(readings -> readings.name().equals(table))
                        .findFirst()
                        .orElseThrow();
        return new Rows(
                declared.columns().stream().map(column -> column.name()).toList(),
                filled.readings().getOrDefault(table, List.of()));
    }

    int rows() {
        return cells.size();
    }

    /** NaN where the cell is blank. */
    double number(int row, String column) {
        return entry(row, column)
                .map(entry -> ((Number) entry.value()).doubleValue())
                .orElse(Double.NaN);
    }

    /** "" where the cell is blank. */
    String word(int row, String column) {
        return entry(row, column).map(entry -> entry.value().toString()).orElse("");
    }

    private Optional<Entry> entry(int row, String column) {
        return cells.get(row).get(columns.indexOf(column));
    }

    /** The last row that a condition on a column's word holds for; -1 if none. */
    int last(String column, String word) {
        int last = -1;
        for (int row = 0; row < rows(); row++) {
            last = word(row, column).equals(word) ? row : last;
        }
        return last;
    }

    /** A number that was typed into a field. */
    static double field(Decided decided, String name) {
        return ((Number) decided.filled().entries().get(name).value()).doubleValue();
    }

    /** A reading of DDM as spoken, in the steps of the receiver. */
    static String tone(double ddm, double step) {
        BigDecimal shown =
                BigDecimal.valueOf(1000 * step)
                        .multiply(BigDecimal.valueOf(Math.round(ddm / step)))
                        .setScale(3, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        return shown.signum() == 0
                ? "0"
                : shown.abs().toPlainString() + (shown.signum() > 0 ? " in the 150" : " in the 90");
    }

    static String number(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static List<String> row(String... cells) {
        return new ArrayList<>(List.of(cells));
    }

    /** Half of the sets go as they should, in the others one to three things go wrong. */
    static List<List<String>> withMishaps(List<List<String>> rows, Random random) {
        int mishaps = random.nextBoolean() ? 0 : 1 + random.nextInt(3);
        for (int i = 0; i < mishaps && rows.size() > 1; i++) {
            Mishap.in(rows, random);
        }
        return rows;
    }

    static double uniform(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    @SafeVarargs
    static <T> T any(Random random, T... all) {
        return all[random.nextInt(all.length)];
    }
}
