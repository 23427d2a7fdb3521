package halfwidth.web;

import halfwidth.approval.Approval;
import halfwidth.job.Fact;
import halfwidth.job.Line;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.show.Counted;
import halfwidth.show.Html;
import halfwidth.show.Sheet;
import halfwidth.show.SheetParts;
import halfwidth.value.Entry;
import halfwidth.vocabulary.EntryPlace;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One visit of a page as it is to be shown.
 *
 * @param sheet the page with its values and what came of them
 * @param ran whether anything did; else it is still being computed
 * @param values what was entered at each place
 * @param remarks what could not be taken over, in words
 * @param standing how the visit stands, in words
 * @param troubles why values that were just sent were not entered
 * @param root the path that all addresses of the session are under
 * @param approval who prepared, checked or sent back just what it shows
 */
record Scene(
        Visit visit,
        Sheet sheet,
        boolean ran,
        Map<Place, Line> values,
        List<String> remarks,
        String standing,
        List<Trouble> troubles,
        String root,
        Approval approval) {

    Page page() {
        return sheet.page();
    }

    /** The pieces of the sheet, with plots to be fetched. */
    SheetParts parts(Html html) {
        return new SheetParts(
                sheet,
                html,
                (step, picture) ->
                        address("/plot")
                                + also("step", Integer.toString(step.index()))
                                + (sheet.example() ? also("with", "example") : "")
                                // The address changes with the plot, which is fetched anew then.
                                + also("of", picture.digest()));
    }

    /** The address of a view of this visit. */
    String address(String view) {
        return root + Address.of(view, visit);
    }

    /** One more value in an address. */
    String also(String name, String value) {
        return Address.also(name, value);
    }

    /** What was typed into a field; "" if nothing was. */
    String typed(Field field) {
        return sheet.example()
                ? field.example()
                : fact(Place.input(field.name())).map(Fact.Value::typed).orElse("");
    }

    /**
     * What stands for a value that is not typed: a default, or what another page found, as briefly
     * as that page shows it.
     */
    String unlessTyped(Field field) {
        if (!typed(field).isEmpty()) {
            return "";
        }
        boolean number = !field.unit().isEmpty();
        return entry(field)
                .map(
                        entry ->
                                isLinked(field) && number
                                        ? entry.understood().split("[ ,]")[0]
                                        : entry.typed())
                .orElse("");
    }

    /** All digits of a value from another page; "" where there is none. */
    String inFull(Field field) {
        return typed(field).isEmpty() && isLinked(field)
                ? entry(field).map(Entry::typed).orElse("")
                : "";
    }

    private boolean isLinked(Field field) {
        return sheet.filled().origins().containsKey(field.name());
    }

    /** How a field was understood, and where its value comes from. */
    String understood(Field field) {
        Optional<Entry> entry = entry(field);
        if (entry.isEmpty()) {
            return field.from().isPresent() ? "from " + field.from().get() : "";
        }
        String origin = sheet.filled().origins().getOrDefault(field.name(), "usual value");
        return typed(field).isEmpty()
                ? entry.get().understood() + " (" + origin + ")"
                : entry.get().understood();
    }

    private Optional<Entry> entry(Field field) {
        return Optional.ofNullable(sheet.filled().entries().get(field.name()));
    }

    private Optional<Fact.Value> fact(Place place) {
        return Optional.ofNullable(values.get(place)).map(line -> (Fact.Value) line.fact());
    }

    Optional<Trouble> trouble(Place place) {
        return troubles.stream()
                .filter(trouble -> trouble.place().equals(place))
                .findFirst()
                .or(() -> refusedByPage(place));
    }

    /** What the page has against an entry that it cannot calculate with. */
    private Optional<Trouble> refusedByPage(Place place) {
        EntryPlace entry = new EntryPlace(place.name(), place.row(), place.column());
        return sheet.run().steps().stream()
                .map(Run.Ran::outcome)
                .filter(Outcome.Failed.class::isInstance)
                .map(Outcome.Failed.class::cast)
                .filter(failed -> failed.refused().filter(entry::equals).isPresent())
                .map(failed -> new Trouble(place, typed(place), failed.reason(), false, true))
                .findFirst();
    }

    private String typed(Place place) {
        return fact(place).map(Fact.Value::typed).orElse("");
    }

    /** How many rows of a table are filled in. */
    int rows(String table) {
        return values.entrySet().stream()
                .filter(entry -> entry.getKey().name().equals(table))
                .filter(entry -> !isEmpty((Fact.Value) entry.getValue().fact()))
                .mapToInt(entry -> entry.getKey().row())
                .filter(row -> row <= Place.MOST_ROWS)
                .max()
                .orElse(0);
    }

    private static boolean isEmpty(Fact.Value value) {
        return value.typed().isEmpty() && value.reason().isEmpty();
    }

    Cell cell(Place place, Column column) {
        Optional<Fact.Value> fact = fact(place);
        String typed = fact.map(Fact.Value::typed).orElse("");
        return new Cell(
                typed,
                typed.isEmpty() ? "" : column.read(typed).map(Entry::understood).orElse(""),
                fact.map(Fact.Value::reason).orElse(""));
    }

    /** How many readings of a table there are and how many are missing, in words. */
    String counted(Part.Readings table) {
        int rows = rows(table.name());
        if (rows == 0) {
            return table.optional() ? "Not filled in: optional." : "Not filled in.";
        }
        long missing = 0;
        long withReason = 0;
        for (int row = 1; row <= rows; row++) {
            for (Column column : table.columns()) {
                Cell cell = cell(Place.cell(table.name(), row, column.name()), column);
                withReason += cell.reason().isEmpty() ? 0 : 1;
                missing += cell.isBlank() && !column.optional() ? 1 : 0;
            }
        }
        String lacking = missing == 0 ? "none" : Counted.of(missing, "reading");
        String explained = withReason == 0 ? "" : ", %s blank with a reason".formatted(withReason);
        return "%s, %s missing%s.".formatted(Counted.of(rows, "row"), lacking, explained);
    }
}
