package halfwidth.notebooks;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Answer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Makes the mistakes of one page after the other, and runs each on the worked example. */
final class MistakenPages implements AutoCloseable {
    private final Workshop workshop = Workshop.withoutSpare(Budget.USUAL);

    /**
     * A mistake and what came of it.
     *
     * @param changed whether any step's value or stated unit differs from the sound page's
     * @param seconds how long it took (s)
     */
    record Finding(Mistake mistake, Caught caught, boolean changed, double seconds) {}

    /** Runs mistakes that are all of one page. */
    List<Finding> run(String page, List<Mistake> mistakes) throws IOException {
        Page sound = Mistake.sound(page);
        Script script = Script.of(sound);
        List<Finding> findings = new ArrayList<>();
        try (OpenPage open = workshop.open(script)) {
            Run run = open.run(Values.of(Filled.example(sound)));
            List<Answer> answers = Answer.of(sound, run);
            if (Caught.by(sound, run, answers) != Caught.NONE) {
                throw new AssertionError(page + " does not hold as it is shipped");
            }
            Sound compared = new Sound(open, script, traces(run), answers);
            for (Mistake mistake : mistakes) {
                findings.add(find(mistake, compared));
            }
        }
        return findings;
    }

    /** A page as it is shipped, and what comes of it. */
    private record Sound(OpenPage open, Script script, List<String> traces, List<Answer> answers) {}

    private Finding find(Mistake mistake, Sound sound) throws IOException {
        long start = System.nanoTime();
        Caught caught;
        boolean changed = true;
        try {
            Page made = mistake.made();
            Run run = run(made, sound);
            caught = Caught.by(made, run, sound.answers());
            changed = !traces(run).equals(sound.traces());
        } catch (PageRefused refusal) {
            caught = Caught.by(refusal);
        }
        return new Finding(mistake, caught, changed, (System.nanoTime() - start) / 1e9);
    }

    /** A mistake in an input or a reading leaves the code as it was, which is compiled already. */
    private Run run(Page made, Sound sound) {
        Script script = Script.of(made);
        Values values = Values.of(Filled.example(made));
        if (script.equals(sound.script())) {
            return sound.open().run(values);
        }
        try (OpenPage open = workshop.open(script)) {
            return open.run(values);
        }
    }

    private static List<String> traces(Run run) {
        return run.steps().stream()
                .map(ran -> ran.step().name() + " " + trace(ran.outcome()) + ran.step().unit())
                .toList();
    }

    private static String trace(Outcome outcome) {
        return outcome instanceof Outcome.Done done && done.value() instanceof Shown.Picture picture
                ? picture.description()
                : outcome.toString();
    }

    @Override
    public void close() {
        workshop.close();
    }
}
