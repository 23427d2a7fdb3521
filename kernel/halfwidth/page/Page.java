package halfwidth.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One worked page, as parsed.
 *
 * @param name the file's place under the notebooks folder without its ending, with forward slashes,
 *     as in {@code transmit/feed-trim}
 * @param file where it was read from
 * @param title the text of its level-one heading
 * @param parts its prose and blocks in the order of the file
 * @param text the file's text, each line ended by a line feed
 */
public record Page(String name, Path file, String title, List<Part> parts, String text) {

    public Page {
        parts = List.copyOf(parts);
    }

    /** A page made of parts alone, that no file holds. */
    public Page(String name, Path file, String title, List<Part> parts) {
        this(name, file, title, parts, "");
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

    /** The plain text of the first paragraph after the title; "" if there is none. */
    public String purpose() {
        return prose().flatMap(Markdown::paragraphs).findFirst().orElse("");
    }

    /** The plain text of every quotation that starts with a bold "Caution", in order. */
    public List<String> cautions() {
        return prose().flatMap(prose -> Markdown.quotations(prose, "Caution")).toList();
    }

    /**
     * Why the page leaves the bounds of page code: the plain text of a quotation before its first
     * block that starts with a bold "Outside the bounds"; empty if it stays within them.
     */
    public Optional<String> outsideBounds() {
        return parts.stream()
                .takeWhile(Part.Prose.class::isInstance)
                .map(part -> ((Part.Prose) part).markdown())
                .flatMap(prose -> Markdown.quotations(prose, "Outside the bounds"))
                .map(text -> text.replaceFirst("(?i)^outside the bounds\\W*", ""))
                .findFirst();
    }

    private Stream<String> prose() {
        return all(Part.Prose.class).map(Part.Prose::markdown);
    }

    private <T extends Part> Stream<T> all(Class<T> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast);
    }
}
