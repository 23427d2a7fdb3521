package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How the columns of a CSV file stand for the columns of a table of readings.
 *
 * @param places the place in the file of each column of the table, from 0; -1 for an optional one
 *     that it leaves out
 * @param units the unit to add to a cell of each column of the table; "" for none
 * @param mark the decimal mark of its numbers
 * @param decimals whether a column of the table has numbers with decimals
 * @param width how many columns the file has
 * @param problems what is wrong with the file's header
 */
record FileColumns(
        List<Integer> places,
        List<String> units,
        DecimalMark mark,
        List<Boolean> decimals,
        int width,
        List<String> problems) {

    static FileColumns of(SpreadsheetFile file, List<Column> columns) {
        List<String> header = file.rows().get(0).cells();
        List<CsvRow> below = file.rows().subList(1, file.rows().size());
        List<ColumnHeading> headings = header.stream().map(ColumnHeading::of).toList();
        List<String> found = named(headings, columns);
        List<String> wanted = columns.stream().map(Column::name).toList();
        List<Integer> places = new ArrayList<>();
        List<String> units = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (Column column : columns) {
            int place = found.indexOf(column.name());
            places.add(place);
            units.add(place < 0 ? "" : unit(column, headings.get(place), problems));
            if (place < 0 && !column.optional()) {
                problems.add("column " + column.name() + " is missing; give it");
            } else if (found.lastIndexOf(column.name()) > place) {
                problems.add("column " + column.name() + " is there twice; give it once");
            }
        }
        for (int i = 0; i < found.size(); i++) {
            if (!wanted.contains(found.get(i)) && !isEmpty(i, header, below)) {
                String name = header.get(i).isBlank() ? "(empty)" : header.get(i);
                problems.add("column " + name + " is unknown; " + Near.advice(name, wanted));
            }
        }
        List<Boolean> decimals =
                columns.stream().map(column -> DecimalMark.isIn(column.kind())).toList();
        DecimalMark mark = DecimalMark.of(file.separator(), numbers(places, decimals, below));
        return new FileColumns(places, units, mark, decimals, header.size(), problems);
    }

    /** Headings by the names that the table has for them, whatever their capitals and blanks. */
    private static List<String> named(List<ColumnHeading> headings, List<Column> columns) {
        List<String> wanted = columns.stream().map(Column::name).toList();
        return headings.stream()
                .map(ColumnHeading::name)
                .map(
                        name ->
                                wanted.contains(name)
                                        ? name
                                        : wanted.stream()
                                                .filter(known -> plain(known).equals(plain(name)))
                                                .findFirst()
                                                .orElse(name))
                .toList();
    }

    private static String plain(String name) {
        return name.replaceAll("[\\s\u2009\u202f]+", " ").toLowerCase(Locale.ROOT);
    }

    /** A spreadsheet writes a column in which nothing stands if there is one behind it. */
    private static boolean isEmpty(int place, List<String> header, List<CsvRow> below) {
        return header.get(place).isEmpty()
                && below.stream()
                        .filter(row -> place < row.cells().size())
                        .allMatch(row -> row.cells().get(place).isEmpty());
    }

    private static Stream<String> numbers(
            List<Integer> places, List<Boolean> decimals, List<CsvRow> below) {
        return IntStream.range(0, places.size())
                .filter(i -> decimals.get(i) && places.get(i) >= 0)
                .boxed()
                .flatMap(
                        i ->
                                below.stream()
                                        .filter(row -> places.get(i) < row.cells().size())
                                        .map(row -> row.cells().get(places.get(i))));
    }

    /** The unit that the header states, if that is not the declared one. */
    private static String unit(Column column, ColumnHeading heading, List<String> problems) {
        String stated = heading.bracket().orElse("");
        boolean plain = stated.isEmpty() || stated.equals("1") && column.unit().equals("1");
        boolean same = plain || heading.column().filter(column::takesTheSame).isPresent();
        if (same) {
            return "";
        }
        boolean measured = column.kind() instanceof Kind.Number || Kinds.isDdm(column.kind());
        if (measured && Unit.find(stated).isPresent()) {
            return stated;
        }
        problems.add(
                String.format(
                        "column %s is stated in [%s], which is not known here; give it %s",
                        column.name(),
                        stated,
                        column.unit().isEmpty() ? "without brackets" : "in " + column.unit()));
        return "";
    }

    /**
     * What one would type into a column of the table.
     *
     * @param column its place in the table, from 0
     * @param cells a row of the file
     * @throws halfwidth.value.EntryRefused if its decimal mark cannot be told
     */
    String typed(int column, List<String> cells) {
        String cell = places.get(column) < 0 ? "" : cells.get(places.get(column));
        return withUnit(decimals.get(column) ? mark.read(cell) : cell, units.get(column));
    }

    /** A cell that ends in a digit has no unit of its own. */
    private static String withUnit(String cell, String unit) {
        boolean bare = !cell.isBlank() && Character.isDigit(cell.charAt(cell.length() - 1));
        return bare && !unit.isEmpty() ? Entry.inUnit(cell, unit) : cell;
    }

    String wrongLength(CsvRow line) {
        return String.format(
                "has %d cells where the header has %d; give as many, and put quotation marks"
                        + " around a cell with a comma in it, or save it as xlsx",
                line.cells().size(), width);
    }
}
