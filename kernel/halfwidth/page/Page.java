package halfwidth.page;

import java.nio.file.Path;
import java.util.List;

/**
 * One worked page, as parsed.
 *
 * @param name the file's place under the notebooks folder without its ending, with forward slashes,
 *     as in {@code transmit/feed-trim}
 * @param file where it was read from
 * @param title the text of its level-one heading
 * @param parts its prose and blocks in the order of the file
 */
public record Page(String name, Path file, String title, List<Part> parts) {

    public Page {
        parts = List.copyOf(parts);
    }

    /** Every declared field, in order. */
    public List<Field> fields() {
        return all(Part.Inputs.class).flatMap(inputs -> inputs.fields().stream()).toList();
    }

    /** Every declared table of readings, in order. */
    public List<Part.Readings> readings() {
        return all(Part.Readings.class).toList();
    }

    /** Every declared result, in order. */
    public List<Result> results() {
        return all(Part.Results.class).flatMap(results -> results.results().stream()).toList();
    }

    private <T extends Part> java.util.stream.Stream<T> all(Class<T> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast);
    }
}
