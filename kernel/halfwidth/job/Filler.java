package halfwidth.job;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fills a page in from what the journal comes to. */
final class Filler {
    private final Moment moment;
    private final Page page;
    private final VisitState state;
    private final Sources sources;
    private final Visit visit;
    private final List<String> remarks = new ArrayList<>();

    Filler(Moment moment, Page page, Visit visit) {
        this.moment = moment;
        this.page = page;
        this.state = moment.of(visit).orElseGet(VisitState::new);
        this.visit = visit;
        this.sources = new Sources(moment, visit);
    }

    /** With what comes from other pages and from earlier visits of this one. */
    Filling fill() {
        Filled filled = Filled.none(page);
        for (Field field : page.fields()) {
            filled = withSource(filled, field);
        }
        return new Filling(withTyped(filled, true), remarks);
    }

    /** With what was typed for this visit, and defaults, alone. */
    Filled entered() {
        return withTyped(Filled.none(page), false);
    }

    private Filled withTyped(Filled start, boolean gathering) {
        Filled filled = start;
        Map<String, List<List<String>>> tables = new LinkedHashMap<>();
        for (Line line : state.values().values()) {
            Fact.Value value = (Fact.Value) line.fact();
            if (value.place().isCell()) {
                cell(tables, value);
            } else {
                filled = withInput(filled, value);
            }
        }
        for (Part.Readings table : page.readings()) {
            List<List<String>> rows = new ArrayList<>();
            if (gathering && table.gathered()) {
                rows.addAll(earlier(table));
            }
            rows.addAll(tables.getOrDefault(table.name(), List.of()));
            filled = withTable(filled, table, rows);
        }
        return filled;
    }

    /** The rows of the visits of the same page that were begun before this one. */
    private List<List<String>> earlier(Part.Readings table) {
        return moment.visits().stream()
                .takeWhile(other -> !other.equals(visit))
                .filter(other -> other.page().equals(page.name()))
                .map(other -> new Filler(moment, page, other).entered())
                .flatMap(filled -> filled.readings().getOrDefault(table.name(), List.of()).stream())
                .map(row -> row.stream().map(cell -> cell.map(Entry::typed).orElse("")).toList())
                .toList();
    }

    private Filled withSource(Filled filled, Field field) {
        boolean typed = !state.typed(Place.input(field.name())).isEmpty();
        if (typed || field.from().isEmpty()) {
            return filled;
        }
        Source source = sources.of(field);
        if (source.finding().isEmpty()) {
            remarks.add(field.label() + " (" + field.name() + "): " + source.words());
            return filled;
        }
        try {
            Entry entry = source.entry(field);
            return filled.from(field.name(), entry, source.words());
        } catch (EntryRefused refusal) {
            remarks.add(field.label() + " (" + field.name() + "): " + refusal.getMessage());
            return filled;
        }
    }

    private Filled withInput(Filled filled, Fact.Value value) {
        String name = value.place().name();
        Optional<Field> field =
                page.fields().stream().filter(known -> known.name().equals(name)).findFirst();
        if (value.typed().isEmpty()) {
            return filled;
        }
        if (field.isEmpty()) {
            return leftOut(filled, value, "the page has no such input any more");
        }
        if (!field.get().unit().equals(value.unit())) {
            return leftOut(filled, value, changedUnit(value, field.get().unit()));
        }
        field.get()
                .from()
                .ifPresent(
                        from ->
                                remarks.add(
                                        field.get().label()
                                                + " is typed here, not taken from "
                                                + from.split("#")[0]));
        try {
            return filled.with(name, value.typed());
        } catch (EntryRefused refusal) {
            return leftOut(filled, value, refusal.getMessage());
        }
    }

    private static String changedUnit(Fact.Value value, String unit) {
        return String.format(
                "it was entered where the page counted in %s, which is %s now; enter it again",
                value.unit().isEmpty() ? "words" : value.unit(), unit.isEmpty() ? "words" : unit);
    }

    private <T> T leftOut(T same, Fact.Value value, String why) {
        remarks.add(value.place() + " = " + value.typed() + " is left out: " + why);
        return same;
    }

    private void cell(Map<String, List<List<String>>> tables, Fact.Value value) {
        Place at = value.place();
        Optional<Part.Readings> table =
                page.readings().stream().filter(t -> t.name().equals(at.name())).findFirst();
        List<Column> columns = table.map(Part.Readings::columns).orElse(List.of());
        int column = columns.stream().map(Column::name).toList().indexOf(at.column());
        if (value.typed().isEmpty()) {
            return;
        }
        if (column < 0) {
            leftOut(at, value, "the page has no such column any more");
        } else if (!columns.get(column).unit().equals(value.unit())) {
            leftOut(at, value, changedUnit(value, columns.get(column).unit()));
        } else if (at.row() > Place.MOST_ROWS) {
            leftOut(at, value, "a table holds " + Place.MOST_ROWS + " rows; undo it");
        } else {
            List<List<String>> rows = tables.computeIfAbsent(at.name(), n -> new ArrayList<>());
            while (rows.size() < at.row()) {
                rows.add(new ArrayList<>(Collections.nCopies(columns.size(), "")));
            }
            rows.get(at.row() - 1).set(column, value.typed());
        }
    }

    private Filled withTable(Filled filled, Part.Readings table, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return filled;
        }
        try {
            return filled.withReadings(table.name(), rows);
        } catch (EntryRefused refusal) {
            remarks.add(table.name() + " is left out: " + refusal.getMessage());
            return filled;
        }
    }
}
