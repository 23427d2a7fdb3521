package halfwidth.job;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.NewEntry;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns what is to be entered into facts, if the page understands all of it. */
record Changes(Page page, Visit visit, VisitState state) {

    /**
     * The facts of those changes that change anything.
     *
     * @throws EntryRefused if the page does not understand one of them
     * @throws ChangedMeanwhile if one of them replaces what the person did not see
     */
    List<Fact> facts(List<Change> changes) {
        tooFarDown(changes)
                .forEach(
                        (place, why) -> {
                            throw new EntryRefused(place + ": " + why);
                        });
        List<Fact> facts = new ArrayList<>();
        Set<Place> seen = new HashSet<>();
        for (Change change : changes) {
            if (!seen.add(change.place())) {
                throw new EntryRefused(change.place() + " is given twice; give it once");
            }
            String before = state.typed(change.place());
            Fact.Value value = value(change, before);
            if (isOther(change, before)) {
                if (standsAlready(value)) {
                    continue;
                }
                throw conflict(change, before);
            }
            if (!before.equals(change.typed()) || !value.reason().equals(reason(change.place()))) {
                facts.add(value);
            }
        }
        return facts;
    }

    /** Those that enter something too far down a table, with what is wrong. */
    Map<Place, String> tooFarDown(List<Change> changes) {
        return new RowBound(page, state).refused(changes);
    }

    private String reason(Place place) {
        return Optional.ofNullable(state.values().get(place))
                .map(line -> ((Fact.Value) line.fact()).reason())
                .orElse("");
    }

    private static boolean isOther(Change change, String before) {
        return change.believed().filter(seen -> !seen.equals(before)).isPresent();
    }

    /**
     * Whether what stands there means the same: two who type the same do not contradict each other,
     * nor does somebody whose entry arrived and whose window was closed before it could say so.
     */
    private boolean standsAlready(Fact.Value value) {
        Line line = state.values().get(value.place());
        if (line == null) {
            return value.typed().isEmpty() && value.reason().isEmpty();
        }
        Fact.Value there = (Fact.Value) line.fact();
        return there.reason().equals(value.reason())
                && there.understood().equals(value.understood())
                && there.unit().equals(value.unit())
                && uncertainty(there).equals(uncertainty(value));
    }

    private Optional<Double> uncertainty(Fact.Value value) {
        return value.typed().isEmpty()
                ? Optional.empty()
                : read(value.place(), value.typed()).uncertainty();
    }

    private ChangedMeanwhile conflict(Change change, String before) {
        Line line = state.values().get(change.place());
        return new ChangedMeanwhile(
                String.format(
                        "%s was changed meanwhile%s: it is %s now, it was %s when you saw it, and"
                                + " you enter %s. Nothing was entered; look, and enter it again",
                        change.place(),
                        line == null ? "" : " by " + line.who() + " at " + line.time(),
                        shown(before),
                        shown(change.believed().orElse("")),
                        shown(change.typed())),
                change.place(),
                before);
    }

    private static String shown(String typed) {
        return typed.isEmpty() ? "blank" : "\"" + typed + "\"";
    }

    private Fact.Value value(Change change, String before) {
        Place at = change.place();
        String unit = at.isCell() ? column(at).unit() : field(at).unit();
        Optional<Entry> entry =
                change.typed().isBlank() ? Optional.empty() : Optional.of(read(at, change.typed()));
        if (entry.isPresent() && !change.reason().isEmpty()) {
            throw new EntryRefused(at + " has a value; a reason is for a blank");
        }
        return new Fact.Value(
                visit,
                at,
                entry.isPresent() ? change.typed() : "",
                entry.map(read -> plain(read.value())).orElse(""),
                unit,
                before,
                change.reason());
    }

    static String plain(Object value) {
        return value instanceof Double number ? Decimal.print(number) : value.toString();
    }

    private Entry read(Place at, String typed) {
        try {
            NewEntry.check(at.isCell() ? column(at).kind() : field(at).kind(), typed);
            return at.isCell() ? column(at).read(typed).orElseThrow() : field(at).read(typed);
        } catch (EntryRefused refusal) {
            throw new EntryRefused(at + ": " + refusal.getMessage());
        }
    }

    private Field field(Place at) {
        return page.fields().stream()
                .filter(field -> field.name().equals(at.name()))
                .findFirst()
                .orElseThrow(() -> unknown("input " + at.name()));
    }

    private Column column(Place at) {
        return page.readings().stream()
                .filter(table -> table.name().equals(at.name()))
                .flatMap(table -> table.columns().stream())
                .filter(column -> column.name().equals(at.column()))
                .findFirst()
                .orElseThrow(() -> unknown("table " + at.name() + " with " + at.column()));
    }

    private EntryRefused unknown(String what) {
        return new EntryRefused("page " + page.name() + " has no " + what);
    }

    /** What must be entered so that a visit that now has one thing has another. */
    List<Change> differences(Filled now, Filled wanted) {
        Set<Place> places = new LinkedHashSet<>();
        page.fields().forEach(field -> places.add(Place.input(field.name())));
        for (Part.Readings table : page.readings()) {
            int rows = Math.max(rows(now, table.name()), rows(wanted, table.name()));
            for (int row = 1; row <= rows; row++) {
                for (Column column : table.columns()) {
                    places.add(Place.cell(table.name(), row, column.name()));
                }
            }
        }
        return places.stream()
                .filter(place -> !typed(wanted, place).equals(typed(now, place)))
                .map(place -> Change.to(place, typed(wanted, place)))
                .toList();
    }

    private static int rows(Filled filled, String table) {
        return filled.readings().getOrDefault(table, List.of()).size();
    }

    private String typed(Filled filled, Place place) {
        if (!place.isCell()) {
            return Optional.ofNullable(filled.entries().get(place.name()))
                    .map(Entry::typed)
                    .orElse("");
        }
        if (place.row() > rows(filled, place.name())) {
            return "";
        }
        return filled.readings().get(place.name()).get(place.row() - 1).get(index(place)).stream()
                .map(Entry::typed)
                .findFirst()
                .orElse("");
    }

    private int index(Place place) {
        return page.readings().stream()
                .filter(table -> table.name().equals(place.name()))
                .findFirst()
                .map(table -> table.columns().stream().map(Column::name).toList())
                .orElseThrow()
                .indexOf(place.column());
    }
}
