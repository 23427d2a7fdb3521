package halfwidth.job;

import halfwidth.page.Page;
import halfwidth.page.Part;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How far down the tables of a visit may be filled in: a row far below the last one is a slip, and
 * every row above it would have to be shown. A value is taken back wherever it stands.
 */
record RowBound(Page page, VisitState state) {
    private static final int AHEAD = 100;

    /** Those changes that enter something too far down, with what is wrong. */
    Map<Place, String> refused(List<Change> changes) {
        Map<Place, String> refused = new LinkedHashMap<>();
        for (Part.Readings table : page.readings()) {
            int last = Math.max(table.example().size(), lastRow(table.name()));
            List<Place> entered =
                    changes.stream()
                            .filter(RowBound::enters)
                            .map(Change::place)
                            .filter(place -> place.isCell() && place.name().equals(table.name()))
                            .sorted(Comparator.comparing(Place::row))
                            .toList();
            for (Place place : entered) {
                int most = Math.min(last + AHEAD, Place.MOST_ROWS);
                if (place.row() > most) {
                    refused.put(place, words(place, most));
                } else {
                    last = Math.max(last, place.row());
                }
            }
        }
        return refused;
    }

    private static boolean enters(Change change) {
        return !change.typed().isBlank() || !change.reason().isEmpty();
    }

    private int lastRow(String table) {
        return state.values().entrySet().stream()
                .filter(entry -> entry.getKey().name().equals(table))
                .filter(entry -> isFilled((Fact.Value) entry.getValue().fact()))
                .mapToInt(entry -> entry.getKey().row())
                .filter(row -> row <= Place.MOST_ROWS)
                .max()
                .orElse(0);
    }

    private static boolean isFilled(Fact.Value value) {
        return !value.typed().isEmpty() || !value.reason().isEmpty();
    }

    private static String words(Place place, int most) {
        return most == Place.MOST_ROWS
                ? "Row %s is too far down: a table holds %s rows.".formatted(place.row(), most)
                : "Row %s is far below the last row; fill in one of rows 1 to %s."
                        .formatted(place.row(), most);
    }
}
