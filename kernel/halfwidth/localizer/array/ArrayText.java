package halfwidth.localizer.array;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Collects the rows of an array file: properties, column names, elements. */
final class ArrayText {
    private final String source;
    private final ArrayProperties properties = new ArrayProperties();
    private final List<Double> positions = new ArrayList<>();
    private final Map<FeedPath, List<Current>> currents = new HashMap<>();
    private ArrayColumns columns;

    ArrayText(String source) {
        this.source = source;
    }

    void take(Row row) {
        if (row.isNote()) {
            return;
        }
        if (columns != null) {
            takeElement(row);
        } else if (row.first().equals(ArrayColumns.ELEMENT)) {
            columns = ArrayColumns.of(row);
        } else {
            properties.take(row);
        }
    }

    private void takeElement(Row row) {
        row.requireCells(columns.count());
        if (row.number(0, ArrayColumns.ELEMENT) != positions.size() + 1) {
            throw row.refusal("element must be number " + (positions.size() + 1) + " here");
        }
        double position = columns.position(row);
        if (positions.contains(position)) {
            throw row.refusal("position " + position + " m must differ from the others");
        }
        positions.add(position);
        for (FeedPath path : columns.paths()) {
            currents.computeIfAbsent(path, any -> new ArrayList<>())
                    .add(columns.current(row, path));
        }
    }

    ArrayModel model() {
        if (positions.isEmpty()) {
            throw new IllegalArgumentException(
                    source
                            + ": must have a row of column names that begins with \"element\", and"
                            + " a row for each element below it");
        }
        try {
            return new ArrayModel(properties.name(), positions, properties.pattern(), carriers());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(source + ": " + e.getMessage(), e);
        }
    }

    private List<Carrier> carriers() {
        List<Carrier> carriers = new ArrayList<>();
        carriers.add(
                new Carrier(
                        properties.courseFrequency(),
                        properties.depth(),
                        currents.get(FeedPath.COURSE_CSB),
                        currents.get(FeedPath.COURSE_SBO)));
        boolean fed = currents.containsKey(FeedPath.CLEARANCE_CSB);
        if (fed != properties.hasClearance()) {
            throw new IllegalArgumentException(
                    "clearance frequency and clearance currents must be given together or not"
                            + " at all");
        }
        if (fed) {
            carriers.add(
                    new Carrier(
                            properties.clearanceFrequency(),
                            properties.depth(),
                            currents.get(FeedPath.CLEARANCE_CSB),
                            currents.get(FeedPath.CLEARANCE_SBO)));
        }
        return carriers;
    }
}
