package halfwidth.notebooks;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Answer;
import halfwidth.vocabulary.EntryPlace;
import java.nio.file.Path;
import java.util.List;

/** The feed-trim page open in a worker, and what a run of it came to. */
final class FeedTrimTable implements AutoCloseable {
    private static final Page PAGE = new Pages(Path.of("notebooks")).find("transmit/feed-trim");

    private final Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
    private final OpenPage open = workshop.open(Script.of(PAGE));

    /** The page as a crew fills it in, before any phasing. */
    static Filled page() {
        return Filled.none(PAGE)
                .with("frequency", "110.0 MHz")
                .with("velocityFactor", "0.83")
                .with("velocityFactorUncertainty", "0.02")
                .with("resolution", "0.5")
                .with("smallestCut", "1/16 in")
                .with("target", "0.5");
    }

    /** Rows of a table, each as four cells with commas between. */
    static List<List<String>> rows(String... lines) {
        return List.of(lines).stream().map(line -> List.of(line.split(",", -1))).toList();
    }

    Found phasings(String... lines) {
        return run(page().withReadings("phasing", rows(lines)));
    }

    Found run(Filled filled) {
        return new Found(open.run(Values.of(filled)));
    }

    byte[] picture(Found found) {
        return open.draw(found.picture(), 720, 450, 1);
    }

    @Override
    public void close() {
        open.close();
        workshop.close();
    }

    /** What a run came to. */
    record Found(Run run) {
        Shown result(String name) {
            Shown value = run.finals().get(name);
            if (value == null) {
                throw new AssertionError("no " + name + ": " + failures());
            }
            return value;
        }

        double number(String name) {
            return result(name) instanceof Shown.Measured measured
                    ? measured.value()
                    : ((Shown.Real) result(name)).value();
        }

        double uncertainty(String name) {
            return ((Shown.Measured) result(name)).standardUncertainty();
        }

        String words(String name) {
            return result(name) instanceof Shown.Advice advice
                    ? advice.action().words()
                    : ((Shown.Words) result(name)).text();
        }

        /** A result as the sheet shows it, with what stands beside it. */
        Answer answer(String name) {
            return Answer.of(PAGE, run).stream()
                    .filter(answer -> answer.result().name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        /** The entry that the first failing step refuses. */
        EntryPlace refused() {
            return run.steps().stream()
                    .map(Run.Ran::outcome)
                    .filter(Outcome.Failed.class::isInstance)
                    .flatMap(outcome -> ((Outcome.Failed) outcome).refused().stream())
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no entry refused: " + failures()));
        }

        /** The number that the step gave which declares this name. */
        double step(String name) {
            return run.steps().stream()
                    .filter(ran -> ran.step().name().equals(name))
                    .map(ran -> (Shown.Real) ((Outcome.Done) ran.outcome()).value())
                    .findFirst()
                    .orElseThrow()
                    .value();
        }

        /** What was refused, in the words that the technician sees. */
        String failures() {
            return run.steps().stream()
                    .map(Run.Ran::outcome)
                    .filter(Outcome.Failed.class::isInstance)
                    .map(outcome -> ((Outcome.Failed) outcome).reason())
                    .toList()
                    .toString();
        }

        private int picture() {
            return run.steps().stream()
                    .filter(
                            ran ->
                                    ran.outcome() instanceof Outcome.Done done
                                            && done.value() instanceof Shown.Picture)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no plot: " + failures()))
                    .step()
                    .index();
        }
    }
}
