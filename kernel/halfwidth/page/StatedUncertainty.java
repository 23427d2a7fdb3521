package halfwidth.page;

import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A standard uncertainty that is stated apart from the values that have it. */
record StatedUncertainty(Filled filled, String place, String typed) {

    Filled applied() {
        Optional<Field> field =
                filled.page().fields().stream().filter(f -> f.name().equals(place)).findFirst();
        if (field.isPresent()) {
            return field(field.get());
        }
        List<String> places = new ArrayList<>();
        filled.page().fields().forEach(known -> places.add(known.name()));
        for (Part.Readings table : filled.page().readings()) {
            for (int i = 0; i < table.columns().size(); i++) {
                String column = table.name() + "." + table.columns().get(i).name();
                places.add(column);
                if (column.equals(place)) {
                    return column(table, i);
                }
            }
        }
        throw refused(
                "there is no such field or column of readings; " + Near.advice(place, places));
    }

    private Filled field(Field field) {
        Entry entry = filled.entries().get(place);
        if (entry == null) {
            throw refused("it is not filled in here; fill it in first");
        }
        if (Entry.read(field.kind(), field.unit(), entry.typed()).uncertainty().isPresent()) {
            throw refused("it has one already, " + entry.typed() + "; change it there");
        }
        return filled.withEntry(
                place,
                plus(
                        entry,
                        field.kind(),
                        field.unit(),
                        both -> field.range().check(Entry.read(field.kind(), field.unit(), both))));
    }

    private Filled column(Part.Readings table, int place) {
        List<List<Optional<Entry>>> rows = filled.readings().get(table.name());
        if (rows == null) {
            throw refused("no readings are filled in here; fill them in first");
        }
        Column column = table.columns().get(place);
        List<List<Optional<Entry>>> changed = new ArrayList<>();
        for (List<Optional<Entry>> row : rows) {
            List<Optional<Entry>> cells = new ArrayList<>(row);
            cells.set(place, row.get(place).map(cell -> cell(cell, column)));
            changed.add(cells);
        }
        return filled.withTable(table.name(), changed);
    }

    private Entry cell(Entry cell, Column column) {
        return cell.uncertainty().isPresent()
                ? cell
                : plus(cell, column.kind(), column.unit(), both -> column.read(both).orElseThrow());
    }

    /** Reads a value again as if the uncertainty had been typed behind it. */
    private Entry plus(Entry entry, Kind kind, String unit, Function<String, Entry> read) {
        double size = (Double) size(kind, unit).value();
        String number = Decimal.print(size);
        String both = entry.typed() + " ± " + (unit.equals("1") ? number : number + " " + unit);
        Entry again = read.apply(both);
        if (!again.value().equals(entry.value())
                || !again.uncertainty().equals(Optional.of(size))) {
            throw refused("type the uncertainty behind the value, which is " + entry.typed());
        }
        return again;
    }

    private Entry size(Kind kind, String unit) {
        try {
            return Entry.uncertainty(kind, unit, typed);
        } catch (EntryRefused refusal) {
            throw refused(refusal.getMessage());
        }
    }

    private EntryRefused refused(String why) {
        return new EntryRefused("uncertainty of " + place + ": " + why);
    }
}
