package halfwidth.run;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One measured number that a page runs with: an input, or one cell of a table of readings.
 *
 * @param name the input's or the table's
 * @param column the cell's; "" for an input
 * @param row the cell's, from 1; 0 for an input
 * @param value in the unit of the input or column
 * @param standardUncertainty in the same unit; 0 where none is known
 * @param step by how much to change it to see what follows, in the same unit; above 0
 */
public record InputQuantity(
        String name, String column, int row, double value, double standardUncertainty, double step)
        implements Serializable {
    /** Of the value: small beside any uncertainty, large beside the rounding of a double. */
    private static final double SMALL = 1e-4;

    /**
     * The measured numbers of a filled-in page, uncertain ones first, else in its order. What is
     * counted, chosen or dated is not among them. A number is changed by its standard uncertainty
     * (JCGM 100:2008, 5.1.3, note 2), and one whose uncertainty is not known by a small part of
     * itself.
     */
    public static List<InputQuantity> of(Filled filled) {
        List<InputQuantity> all = new ArrayList<>();
        for (Part part : filled.page().parts()) {
            if (part instanceof Part.Inputs inputs) {
                inputs.fields().forEach(field -> add(filled, field, all));
            } else if (part instanceof Part.Readings table) {
                for (int i = 0; i < table.columns().size(); i++) {
                    add(filled, table, i, all);
                }
            }
        }
        all.sort(Comparator.comparing(quantity -> quantity.standardUncertainty() == 0));
        return all;
    }

    private static void add(Filled filled, Field field, List<InputQuantity> all) {
        Entry entry = filled.entries().get(field.name());
        if (entry != null && entry.value() instanceof Double value) {
            all.add(of(field.name(), "", 0, entry, value == 0 ? 1 : Math.abs(value)));
        }
    }

    private static void add(
            Filled filled, Part.Readings table, int place, List<InputQuantity> all) {
        Column column = table.columns().get(place);
        List<Optional<Entry>> cells =
                filled.readings().getOrDefault(table.name(), List.of()).stream()
                        .map(row -> row.get(place))
                        .toList();
        double scale = cells.stream().mapToDouble(InputQuantity::size).max().orElse(0);
        for (int row = 0; row < cells.size(); row++) {
            if (size(cells.get(row)) >= 0) {
                Entry entry = cells.get(row).orElseThrow();
                all.add(of(table.name(), column.name(), row + 1, entry, scale == 0 ? 1 : scale));
            }
        }
    }

    /** How large a number is; below 0 for what is none. */
    private static double size(Optional<Entry> cell) {
        return cell.isPresent() && cell.get().value() instanceof Double value
                ? Math.abs(value)
                : -1;
    }

    private static InputQuantity of(
            String name, String column, int row, Entry entry, double scale) {
        double uncertainty = entry.uncertainty().orElse(0.0);
        double step = uncertainty > 0 ? uncertainty : SMALL * scale;
        return new InputQuantity(name, column, row, (Double) entry.value(), uncertainty, step);
    }

    /** The input, or the column of a table, as in {@code phasing.offset 1}. */
    public String source() {
        return column.isEmpty() ? name : name + "." + column;
    }
}
