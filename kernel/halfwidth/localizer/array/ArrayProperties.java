package halfwidth.localizer.array;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The properties of an array file. */
final class ArrayProperties {
    static final String NAME = "name";
    static final String COURSE_FREQUENCY = "course frequency [MHz]";
    static final String CLEARANCE_FREQUENCY = "clearance frequency [MHz]";
    static final String DEPTH = "depth of each tone [1]";
    static final String PATTERN = "element pattern";
    static final String PATTERN_DECIBELS = "element pattern [dB]";
    static final String PATTERN_FIELD = "element pattern [1]";
    static final String ISOTROPIC = "isotropic";
    static final String COSINE_POWER = "cosine power";

    private static final Set<String> ALL =
            new LinkedHashSet<>(
                    List.of(
                            NAME,
                            COURSE_FREQUENCY,
                            CLEARANCE_FREQUENCY,
                            DEPTH,
                            PATTERN,
                            PATTERN_DECIBELS,
                            PATTERN_FIELD));
    private static final Set<String> POINTS = Set.of(PATTERN_DECIBELS, PATTERN_FIELD);

    private final Map<String, Object> given = new HashMap<>();
    private final List<Double> azimuths = new ArrayList<>();
    private final List<Double> levels = new ArrayList<>();

    void take(Row row) {
        String property = row.first();
        if (!ALL.contains(property)) {
            throw row.refusal(
                    "\""
                            + property
                            + "\" must be one of the properties "
                            + ALL
                            + " or the column name \"element\"");
        }
        row.requireCells(property.startsWith(PATTERN) ? 3 : 2);
        if (given.put(property, value(property, row)) != null && !POINTS.contains(property)) {
            throw row.refusal(property + " must be given once");
        }
        if (given.keySet().stream().filter(name -> name.startsWith(PATTERN)).count() > 1) {
            throw row.refusal("element pattern must be given in one way only");
        }
    }

    private Object value(String property, Row row) {
        return switch (property) {
            case NAME -> row.text(1, NAME);
            case COURSE_FREQUENCY, CLEARANCE_FREQUENCY -> hertz(row);
            case DEPTH -> row.number(1, DEPTH);
            case PATTERN -> pattern(row);
            default -> point(row);
        };
    }

    /** By decimal arithmetic: 110.1 MHz is 110 100 000 Hz and not a rounding beside it. */
    private static double hertz(Row row) {
        row.number(1, row.first());
        return new BigDecimal(row.text(1, row.first())).movePointRight(6).doubleValue();
    }

    private static ElementPattern pattern(Row row) {
        return switch (row.text(1, PATTERN)) {
            case ISOTROPIC -> ElementPattern.ISOTROPIC;
            case COSINE_POWER -> new ElementPattern.CosinePower(row.number(2, "exponent"));
            default ->
                    throw row.refusal(
                            "element pattern must be \"isotropic\" or \"cosine power\" with an exponent");
        };
    }

    private int point(Row row) {
        double azimuth = row.number(1, "azimuth [deg]");
        if (!azimuths.isEmpty() && azimuth <= azimuths.get(azimuths.size() - 1)) {
            throw row.refusal("azimuth " + azimuth + " deg must be above the one before it");
        }
        azimuths.add(azimuth);
        levels.add(row.number(2, "field"));
        return azimuths.size();
    }

    String name() {
        return (String) required(NAME);
    }

    double courseFrequency() {
        return (Double) required(COURSE_FREQUENCY);
    }

    boolean hasClearance() {
        return given.containsKey(CLEARANCE_FREQUENCY);
    }

    double clearanceFrequency() {
        return (Double) required(CLEARANCE_FREQUENCY);
    }

    double depth() {
        return (Double) required(DEPTH);
    }

    ElementPattern pattern() {
        if (given.containsKey(PATTERN_DECIBELS)) {
            return ElementPattern.Table.ofDecibels(azimuths, levels);
        }
        if (given.containsKey(PATTERN_FIELD)) {
            return new ElementPattern.Table(azimuths, levels);
        }
        return (ElementPattern) required(PATTERN);
    }

    private Object required(String property) {
        if (!given.containsKey(property)) {
            throw new IllegalArgumentException(property + " must be given");
        }
        return given.get(property);
    }
}
