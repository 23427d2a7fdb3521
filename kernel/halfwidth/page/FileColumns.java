package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;

/**
 * How the columns of a CSV file stand for the columns of a table of readings.
 *
 * @param places the place in the file of each column of the table, from 0; -1 for an optional one
 *     that it leaves out
 * @param units the unit to add to a cell of each column of the table; "" for none
 * @param width how many columns the file has
 * @param problems what is wrong with the file's header
 */
record FileColumns(List<Integer> places, List<String> units, int width, List<String> problems) {

    /** Commas, or what programs write instead where the comma is the decimal point. */
    static CSVFormat format(String text) {
        String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char separator = header.contains("\t") ? '\t' : header.contains(";") ? ';' : ',';
        return CsvRow.COMMAS.builder().setDelimiter(separator).get();
    }

    static FileColumns of(List<String> header, List<Column> columns) {
        List<ColumnHeading> headings = header.stream().map(ColumnHeading::of).toList();
        List<String> found = headings.stream().map(ColumnHeading::name).toList();
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
            if (!wanted.contains(found.get(i))) {
                String name = header.get(i).isBlank() ? "(empty)" : header.get(i);
                problems.add("column " + name + " is unknown; " + Near.advice(name, wanted));
            }
        }
        return new FileColumns(places, units, header.size(), problems);
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

    /** The cells of a row in the order of the table; empty if the row is of another length. */
    Optional<List<String>> inOrder(List<String> cells) {
        if (cells.size() != width) {
            return Optional.empty();
        }
        List<String> ordered = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            String cell = places.get(i) < 0 ? "" : cells.get(places.get(i));
            ordered.add(withUnit(cell, units.get(i)));
        }
        return Optional.of(ordered);
    }

    /** A cell that ends in a digit has no unit of its own. */
    private static String withUnit(String cell, String unit) {
        boolean bare = !cell.isBlank() && Character.isDigit(cell.charAt(cell.length() - 1));
        return bare && !unit.isEmpty() ? Entry.inUnit(cell, unit) : cell;
    }

    String wrongLength(CsvRow line) {
        return String.format(
                "has %d cells where the header has %d; give as many, and put quotation marks"
                        + " around a cell with a decimal comma",
                line.cells().size(), width);
    }
}
