package halfwidth.adapt;

import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.page.Problem;
import halfwidth.run.Step;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A page under the engineer's hands: its text, and what reading it gives. A text that cannot be
 * read is kept all the same, so that nothing typed is lost.
 *
 * @param name the page's name
 * @param file where the text is from, for messages
 * @param page the page it makes; empty if there are problems
 * @param problems what is wrong with it, by line
 */
public record Draft(
        String name, Path file, PageText text, Optional<Page> page, List<Problem> problems) {

    public Draft {
        problems = List.copyOf(problems);
    }

    /** Reads a text. */
    public static Draft of(String name, Path file, String text) {
        return of(name, file, PageText.of(text));
    }

    private static Draft of(String name, Path file, PageText text) {
        try {
            Page page = Pages.parse(name, file, text.toString());
            return new Draft(name, file, text, Optional.of(page), List.of());
        } catch (PageRefused refusal) {
            return new Draft(name, file, text, Optional.empty(), refusal.problems());
        }
    }

    /**
     * The lines of a step with the comments before and behind it. Steps that share a line share
     * their place.
     *
     * @throws IllegalArgumentException if the step is not where it says, since the page was changed
     *     after it ran
     */
    public Place place(Step step) {
        return new Finder(text).step(step);
    }

    /**
     * The lines between the fences of a block, or those of a piece of prose.
     *
     * @throws IllegalArgumentException if there is no block at its line
     */
    public Place place(Part part) {
        return new Finder(text).part(part);
    }

    /** This page with other lines in a place. */
    public Draft replace(Place place, String typed) {
        return edited(text.with(place, typed), place.fenced() ? place.first() : 0, typed);
    }

    /** This page with more lines after a place: a step after a step, a row after a row. */
    public Draft insertAfter(Place place, String typed) {
        return edited(
                text.after(place.last(), typed), place.fenced() ? place.last() + 1 : 0, typed);
    }

    /** This page without the lines of a place. */
    public Draft remove(Place place) {
        return of(name, file, text.without(place));
    }

    /**
     * This page with one more row under its last {@code csv inputs} block.
     *
     * @throws IllegalArgumentException if it has none, or cannot be read as it stands
     */
    public Draft addInput(String row) {
        return insertAfter(lastBlock(Part.Inputs.class).orElseThrow(this::noInputs), row);
    }

    private IllegalArgumentException noInputs() {
        return new IllegalArgumentException(
                "page " + name + " must have a csv inputs block to add to");
    }

    /**
     * This page with one more check, in its last {@code java check} block or in one at its end.
     *
     * @throws IllegalArgumentException if it cannot be read as it stands
     */
    public Draft addCheck(String typed) {
        Optional<Place> checks = lastBlock(Part.Checks.class);
        if (checks.isPresent()) {
            return insertAfter(checks.get(), typed);
        }
        String block = "\n```java check\n" + typed + "\n```";
        return edited(text.after(text.count(), block), text.count() + 3, typed);
    }

    private Optional<Place> lastBlock(Class<? extends Part> kind) {
        Page read =
                page.orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "page " + name + " must be free of problems to add to it"));
        return read.parts().stream()
                .filter(kind::isInstance)
                .reduce((before, after) -> after)
                .map(this::place);
    }

    /**
     * Reads an edited text.
     *
     * @param fencedFrom the line of the first typed one if they stand in a block, else 0
     */
    private Draft edited(PageText now, int fencedFrom, String typed) {
        List<Problem> ends = fencedFrom > 0 ? blockEnds(fencedFrom, typed) : List.of();
        return ends.isEmpty()
                ? of(name, file, now)
                : new Draft(name, file, now, Optional.empty(), ends);
    }

    private List<Problem> blockEnds(int first, String typed) {
        List<String> contents = PageText.contents(typed);
        return IntStream.range(0, contents.size())
                .filter(i -> Finder.endsBlock(contents.get(i)))
                .mapToObj(i -> new Problem(file, first + i, blockEnd(contents.get(i))))
                .toList();
    }

    private static String blockEnd(String content) {
        return "a line of "
                + content.strip()
                + " alone would end the block; expected something else on that line";
    }
}
