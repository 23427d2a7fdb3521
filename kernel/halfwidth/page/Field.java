package halfwidth.page;

import halfwidth.value.Kind;
import java.util.Optional;

/**
 * One declared input.
 *
 * @param line its line in the file, 1-based
 * @param name the Java variable it becomes
 * @param kind what may be typed into it
 * @param unit the unit its value has in the steps, "1" for a plain number, "" where a unit makes no
 *     sense
 * @param example the worked example's value as one would type it; never used as real data
 * @param standing a default, only for real constants, as one would type it
 * @param least smallest allowed value, in {@code unit}
 * @param most largest allowed value, in {@code unit}
 * @param label what a technician reads beside the field
 */
public record Field(
        int line,
        String name,
        Kind kind,
        String unit,
        String example,
        Optional<String> standing,
        Optional<Double> least,
        Optional<Double> most,
        String label) {}
