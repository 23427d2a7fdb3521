package halfwidth.show;

import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.run.Outcome;
import halfwidth.run.PageLost;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.value.Entry;
import halfwidth.vocabulary.EntryPlace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/**
 * A page with what was entered and what came of it.
 *
 * @param filled the page with what was entered
 * @param run what came of it
 * @param heading what is known for the heading, as in {@code "Station" → "Demo"}; what is not known
 *     leaves a rule to write on
 * @param stamp what made the sheet
 * @param ownCopy what is to be known of the page if it is a job's own
 */
public record Sheet(
        Filled filled,
        Run run,
        Map<String, String> heading,
        Stamp stamp,
        Optional<OwnCopy> ownCopy) {

    /** A sheet of a shipped page. */
    public Sheet(Filled filled, Run run, Map<String, String> heading, Stamp stamp) {
        this(filled, run, heading, stamp, Optional.empty());
    }

    /** The same sheet of a page that is a job's own. */
    public Sheet ofOwnCopy(OwnCopy copy) {
        return new Sheet(filled, run, heading, stamp, Optional.of(copy));
    }

    /** The same sheet with another heading. */
    public Sheet headedBy(Map<String, String> other) {
        return new Sheet(filled, run, other, stamp, ownCopy);
    }

    /**
     * The same sheet with its plots drawn. Where one cannot be, since the page's worker had to be
     * ended, its description stands alone.
     *
     * @param draw gives the PNG picture of a step's plot, by the step's index
     */
    public Sheet drawn(IntFunction<byte[]> draw) {
        List<Ran> steps = run.steps().stream().map(ran -> drawn(ran, draw)).toList();
        return new Sheet(
                filled,
                new Run(steps, run.checks(), run.finals(), run.worked(), run.rows()),
                heading,
                stamp,
                ownCopy);
    }

    private static Ran drawn(Ran ran, IntFunction<byte[]> draw) {
        if (ran.outcome() instanceof Outcome.Done done
                && done.value() instanceof Shown.Picture picture) {
            Shown shown = picture.drawn(png(ran, draw));
            return new Ran(ran.step(), new Outcome.Done(shown, done.printed()));
        }
        return ran;
    }

    private static byte[] png(Ran ran, IntFunction<byte[]> draw) {
        try {
            return draw.apply(ran.step().index());
        } catch (PageLost lost) {
            return new byte[0];
        }
    }

    public Page page() {
        return filled.page();
    }

    /** Whether it shows the worked example, which is no station's. */
    public boolean example() {
        return filled.example();
    }

    Map<String, Entry> entries() {
        return filled.entries();
    }

    /** The answers to the page's results, in its order. */
    public List<Answer> answers() {
        return Answer.of(page(), run);
    }

    Optional<Entry> entry(String field) {
        return Optional.ofNullable(entries().get(field));
    }

    /** The rows of a table as typed; blank is missing. */
    List<List<String>> rows(String table) {
        return filled.readings().getOrDefault(table, List.of()).stream()
                .map(row -> row.stream().map(Sheet::typed).toList())
                .toList();
    }

    private static String typed(Optional<Entry> cell) {
        return cell.map(Entry::typed).orElse("");
    }

    /** How a person knows an input or table: its label where it has one, with its name. */
    String known(String name) {
        String label = label(name);
        return label.equals(name) ? name : "%s (%s)".formatted(label, name);
    }

    /** How a person knows a field or cell. */
    String known(EntryPlace entry) {
        return entry.row() == 0 ? known(entry.name()) : Absence.words(entry);
    }

    /** The label of an input; a table has none but its name. */
    String label(String name) {
        return page().fields().stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .map(Field::label)
                .orElse(name);
    }

    List<Ran> failed() {
        return run.steps().stream().filter(ran -> ran.outcome() instanceof Outcome.Failed).toList();
    }

    /** The inputs that steps wait for, each once, in the order they are first waited for. */
    List<String> waitedFor() {
        return outcomes(Outcome.Waiting.class)
                .flatMap(waiting -> waiting.names().stream())
                .distinct()
                .toList();
    }

    <T extends Outcome> Stream<T> outcomes(Class<T> kind) {
        return run.steps().stream().map(Ran::outcome).filter(kind::isInstance).map(kind::cast);
    }

    List<Ran> brokenChecks() {
        return run.checks().stream()
                .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                .toList();
    }

    /** The page's file as a person finds it among the pages. */
    String fileName() {
        return page().name() + ".md";
    }
}
