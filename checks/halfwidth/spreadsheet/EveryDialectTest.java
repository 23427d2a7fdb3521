package halfwidth.spreadsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Column;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Every table of readings of every shipped page, with the rows of its worked example, as every
 * dialect has it: what is read back is what the page reads from its own rows, cell by cell.
 */
class EveryDialectTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final List<Page> PAGES = new Pages(Path.of("notebooks")).all();

    private int files;
    private int cells;

    @Test
    void readsEveryTableInEveryDialect() {
        for (Page page : PAGES) {
            for (Part.Readings table : page.readings()) {
                Filled expected = Filled.none(page).withReadings(table.name(), table.example());
                for (Dialect dialect : Dialect.all()) {
                    hold(page, table, expected, dialect.name(), text(dialect, table));
                }
                for (Workbook.Texts texts : Workbook.Texts.values()) {
                    hold(page, table, expected, "workbook " + texts, workbook(texts, table, false));
                    hold(
                            page,
                            table,
                            expected,
                            "workbook " + texts + ", wide",
                            workbook(texts, table, true));
                }
            }
        }
        System.out.printf("%d files of readings read back, %d cells compared%n", files, cells);
        assertTrue(files >= 300, files + " files");
    }

    private void hold(
            Page page, Part.Readings table, Filled expected, String dialect, byte[] bytes) {
        String what = page.name() + ", " + table.name() + ", " + dialect;
        Filled read;
        try {
            read = Filled.none(page).withReadings(table.name(), SpreadsheetFile.of("file", bytes));
        } catch (RuntimeException refused) {
            throw new AssertionError(what + ": " + refused.getMessage(), refused);
        }
        List<List<Optional<Serializable>>> rows = values(read, table);
        List<List<Optional<Serializable>>> wanted = values(expected, table);
        assertEquals(wanted.size(), rows.size(), what + ": rows");
        for (int row = 0; row < wanted.size(); row++) {
            for (int column = 0; column < table.columns().size(); column++) {
                String at = "%s, row %d, column %d".formatted(what, row + 1, column + 1);
                assertEquals(wanted.get(row).get(column), rows.get(row).get(column), at);
                cells++;
            }
        }
        files++;
    }

    private static List<List<Optional<Serializable>>> values(Filled filled, Part.Readings table) {
        return filled.readings().get(table.name()).stream()
                .map(row -> row.stream().map(cell -> cell.map(Entry::value)).toList())
                .toList();
    }

    private static List<String> headings(Part.Readings table) {
        return table.columns().stream()
                .map(
                        c ->
                                c.unit().isEmpty() || c.unit().equals("1")
                                        ? c.name()
                                        : c.name() + " [" + c.unit() + "]")
                .toList();
    }

    private static boolean isNumber(Column column, String cell) {
        boolean words = column.kind() instanceof Kind.Text || column.kind() instanceof Kind.Choice;
        return !words && NUMBER.matcher(cell).matches();
    }

    /** A spreadsheet with decimal commas keeps the texts, and with them the points in these. */
    private static byte[] text(Dialect dialect, Part.Readings table) {
        List<List<String>> rows = new ArrayList<>();
        for (List<String> row : table.example()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(written(dialect, table.columns().get(i), row.get(i)));
            }
            rows.add(cells);
        }
        return dialect.write(headings(table), rows);
    }

    private static String written(Dialect dialect, Column column, String cell) {
        if (!dialect.comma() || cell.isEmpty()) {
            return cell;
        }
        if (column.kind() instanceof Kind.Date) {
            return LocalDate.parse(cell).format(DateTimeFormatter.ofPattern("dd.MM.uuuu"));
        }
        return isNumber(column, cell) ? cell.replace('.', ',') : cell;
    }

    private static byte[] workbook(Workbook.Texts texts, Part.Readings table, boolean wide) {
        Workbook book = new Workbook(texts);
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>();
        headings(table)
                .forEach(
                        h -> header.add(book.text(wide ? " " + Dialect.shouted(h) + "\u00a0" : h)));
        rows.add(header);
        for (List<String> row : table.example()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(cell(book, table.columns().get(i), row.get(i)));
            }
            rows.add(cells);
        }
        if (wide) {
            rows.forEach(row -> row.add(Workbook.blank()));
            rows.add(List.of(Workbook.blank(), book.text("  ")));
        }
        return book.sheet("Readings", rows).sheet("Notes", List.of()).bytes();
    }

    private static String cell(Workbook book, Column column, String cell) {
        if (cell.isEmpty()) {
            return "";
        }
        if (column.kind() instanceof Kind.Date) {
            // ECMA-376, 18.17.4.1: day 1 is 1900-01-01, and 1900 counts as a leap year.
            long day = ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), LocalDate.parse(cell));
            return Workbook.styled(day, 1);
        }
        return isNumber(column, cell) ? Workbook.number(Double.parseDouble(cell)) : book.text(cell);
    }
}
