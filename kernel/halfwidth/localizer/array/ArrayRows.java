package halfwidth.localizer.array;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The rows of an array file that describe an array. */
final class ArrayRows {
    private final ArrayModel array;
    private final List<FeedPath> paths;

    ArrayRows(ArrayModel array) {
        this.array = array;
        this.paths =
                List.of(FeedPath.values()).stream().filter(path -> path.existsIn(array)).toList();
    }

    List<List<?>> all() {
        List<List<?>> rows = new ArrayList<>();
        rows.add(List.of(ArrayProperties.NAME, array.name()));
        rows.add(List.of(ArrayProperties.COURSE_FREQUENCY, megahertz(array.course())));
        array.clearance()
                .ifPresent(
                        own ->
                                rows.add(
                                        List.of(
                                                ArrayProperties.CLEARANCE_FREQUENCY,
                                                megahertz(own))));
        rows.add(List.of(ArrayProperties.DEPTH, depth()));
        rows.addAll(pattern());
        rows.add(columns());
        for (int n = 0; n < array.positions().size(); n++) {
            rows.add(element(n));
        }
        return rows;
    }

    private double depth() {
        double depth = array.course().depth();
        if (array.carriers().stream().anyMatch(carrier -> carrier.depth() != depth)) {
            throw new IllegalArgumentException(
                    "depth of each tone must be the same on both carriers to be written");
        }
        return depth;
    }

    private static BigDecimal megahertz(Carrier carrier) {
        return new BigDecimal(Double.toString(carrier.frequency())).movePointLeft(6);
    }

    private List<List<?>> pattern() {
        if (array.pattern() instanceof ElementPattern.Table table) {
            List<List<?>> points = new ArrayList<>();
            for (int i = 0; i < table.azimuths().size(); i++) {
                points.add(
                        List.of(
                                ArrayProperties.PATTERN_FIELD,
                                table.azimuths().get(i),
                                table.fields().get(i)));
            }
            return points;
        }
        double power = ((ElementPattern.CosinePower) array.pattern()).power();
        return List.of(
                power == 0
                        ? List.of(ArrayProperties.PATTERN, ArrayProperties.ISOTROPIC)
                        : List.of(ArrayProperties.PATTERN, ArrayProperties.COSINE_POWER, power));
    }

    private List<?> columns() {
        List<String> names = new ArrayList<>();
        names.add(ArrayColumns.ELEMENT);
        names.add(ArrayColumns.POSITION);
        for (FeedPath path : paths) {
            names.add(ArrayColumns.amplitude(path));
            names.add(ArrayColumns.phase(path));
        }
        return names;
    }

    private List<?> element(int n) {
        List<Object> cells = new ArrayList<>();
        cells.add(n + 1);
        cells.add(array.positions().get(n));
        for (FeedPath path : paths) {
            Carrier carrier = array.carriers().get(path.carrier());
            Current current = (path.isSidebandOnly() ? carrier.sbo() : carrier.csb()).get(n);
            cells.add(current.amplitude());
            cells.add(current.phase());
        }
        return cells;
    }
}
