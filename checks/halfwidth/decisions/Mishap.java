package halfwidth.decisions;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What goes wrong between a reading and the sheet, done to a page's worked example. */
final class Mishap {
    private static final Pattern FIGURE = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final int MOST = 4;

    private final Random random;
    private final Page page;
    private final Map<String, String> fields = new TreeMap<>();
    private final Map<String, List<List<String>>> tables = new TreeMap<>();

    private Mishap(Page page, Random random) {
        this.page = page;
        this.random = random;
        page.fields().forEach(field -> fields.put(field.name(), field.example()));
        for (Part.Readings table : page.readings()) {
            List<List<String>> rows = new ArrayList<>();
            table.example().forEach(row -> rows.add(new ArrayList<>(row)));
            tables.put(table.name(), rows);
        }
    }

    /** The worked example as if it were a station's, with up to four mishaps. */
    static Filled on(Page page, Random random) {
        Mishap mishap = new Mishap(page, random);
        int times = 1 + random.nextInt(MOST);
        for (int i = 0; i < times; i++) {
            mishap.happen();
        }
        return mishap.filled();
    }

    private Filled filled() {
        Filled filled = Filled.none(page);
        for (Map.Entry<String, String> field : fields.entrySet()) {
            if (!field.getValue().isBlank()) {
                filled = filled.with(field.getKey(), field.getValue());
            }
        }
        for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
            filled = filled.withReadings(table.getKey(), table.getValue());
        }
        return filled;
    }

    private void happen() {
        List<List<String>> rows = anyTable();
        if (rows == null || rows.isEmpty() || random.nextInt(4) == 0) {
            String name = any(new ArrayList<>(fields.keySet()));
            fields.put(name, slip(fields.get(name), random));
            return;
        }
        in(rows, random);
    }

    /**
     * One mishap in a table: a column in the other tone, a value pasted twice, two columns
     * exchanged, a row lost, or a slip in one cell.
     *
     * @param rows what was typed, which is changed; at least one row
     */
    static void in(List<List<String>> rows, Random random) {
        int column = random.nextInt(rows.get(0).size());
        int row = random.nextInt(rows.size());
        int other = random.nextInt(rows.size());
        switch (random.nextInt(6)) {
            case 0 -> rows.forEach(cells -> cells.set(column, otherTone(cells.get(column))));
            case 1 -> rows.get(row).set(column, rows.get(other).get(column));
            case 2 -> exchange(rows, column, random.nextInt(rows.get(0).size()));
            case 3 -> rows.remove(row);
            default -> rows.get(row).set(column, slip(rows.get(row).get(column), random));
        }
    }

    private static void exchange(List<List<String>> rows, int one, int other) {
        for (List<String> cells : rows) {
            String kept = cells.get(one);
            cells.set(one, cells.get(other));
            cells.set(other, kept);
        }
    }

    private List<List<String>> anyTable() {
        return tables.isEmpty() ? null : tables.get(any(new ArrayList<>(tables.keySet())));
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    /** A blank, the other tone, nothing, or another size. */
    static String slip(String typed, Random random) {
        return switch (random.nextInt(5)) {
            case 0 -> "";
            case 1 -> otherTone(typed);
            case 2 -> scaled(typed, 0);
            case 3 -> scaled(typed, 0.2 + 1.6 * random.nextDouble());
            default -> scaled(typed, random.nextBoolean() ? 10 : 0.1);
        };
    }

    private static String otherTone(String typed) {
        if (typed.contains("in the 90")) {
            return typed.replace("in the 90", "in the 150");
        }
        if (typed.contains("in the 150")) {
            return typed.replace("in the 150", "in the 90");
        }
        return typed.startsWith("-") ? typed.substring(1) : "-" + typed;
    }

    private static String scaled(String typed, double factor) {
        Matcher figure = FIGURE.matcher(typed);
        if (!figure.find()) {
            return typed;
        }
        double value = factor * Double.parseDouble(figure.group());
        return typed.substring(0, figure.start())
                + String.format(Locale.ROOT, "%.4f", value).replaceFirst("\\.?0+$", "")
                + typed.substring(figure.end());
    }
}
