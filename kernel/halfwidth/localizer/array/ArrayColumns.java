package halfwidth.localizer.array;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The columns of the elements in an array file, which may stand in any order. */
final class ArrayColumns {
    static final String ELEMENT = "element";
    static final String POSITION = "position [m]";
    static final Map<FeedPath, String> PATHS =
            new EnumMap<>(
                    Map.of(
                            FeedPath.COURSE_CSB, "course CSB",
                            FeedPath.COURSE_SBO, "course SBO",
                            FeedPath.CLEARANCE_CSB, "clearance CSB",
                            FeedPath.CLEARANCE_SBO, "clearance SBO"));

    private final List<String> names;

    private ArrayColumns(List<String> names) {
        this.names = names;
    }

    static String amplitude(FeedPath path) {
        return PATHS.get(path) + " [1]";
    }

    static String phase(FeedPath path) {
        return PATHS.get(path) + " phase [deg]";
    }

    static ArrayColumns of(Row row) {
        ArrayColumns columns = new ArrayColumns(List.copyOf(row.cells()));
        Set<String> wanted = new LinkedHashSet<>(List.of(ELEMENT, POSITION));
        for (FeedPath path : columns.paths()) {
            wanted.add(amplitude(path));
            wanted.add(phase(path));
        }
        Set<String> seen = new HashSet<>();
        for (String name : row.cells()) {
            if (!wanted.contains(name) || !seen.add(name)) {
                throw row.refusal("column \"" + name + "\" must be one of " + wanted + ", once");
            }
        }
        wanted.removeAll(seen);
        if (!wanted.isEmpty()) {
            throw row.refusal("columns " + wanted + " must be given");
        }
        return columns;
    }

    /** The course's feeds always; the clearance's as soon as one of its columns is there. */
    List<FeedPath> paths() {
        boolean clearance = names.stream().anyMatch(name -> name.startsWith("clearance"));
        return clearance
                ? List.of(FeedPath.values())
                : List.of(FeedPath.COURSE_CSB, FeedPath.COURSE_SBO);
    }

    int count() {
        return names.size();
    }

    double position(Row row) {
        return number(row, POSITION);
    }

    Current current(Row row, FeedPath path) {
        double amplitude = number(row, amplitude(path));
        double phase = number(row, phase(path));
        try {
            return new Current(amplitude, phase);
        } catch (IllegalArgumentException e) {
            throw row.refusal(PATHS.get(path) + " " + e.getMessage());
        }
    }

    private double number(Row row, String name) {
        return row.number(names.indexOf(name), name);
    }
}
