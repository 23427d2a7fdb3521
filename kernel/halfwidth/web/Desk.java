package halfwidth.web;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.record.PaperPlots;
import halfwidth.run.InputQuantity;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One page at work: compiled in its worker, and run with the values of one visit or another. What
 * it gives is always that of a clean run with just these values.
 */
final class Desk {
    /** How a plot is laid out and drawn for a screen, and for paper. */
    static final Size ON_SCREEN = new Size(720, 450, 1.5);

    static final Size ON_PAPER = new Size(PaperPlots.WIDTH, PaperPlots.HEIGHT, PaperPlots.SCALE);

    /** Its worker's own limit is the shorter one, and whoever asked can stop it. */
    private static final Duration AS_LONG_AS_IT_MAY = Duration.ofHours(1);

    /** Windows look at a few visits of a page, and at its worked example. */
    private static final int REMEMBERED = 6;

    /** A page has five plots at most, of 100 kB. */
    private static final int PICTURES = 12;

    private final Function<Page, OpenPage> opening;

    /** The one asked for least lately comes first. */
    private final Map<Values, Run> runs = new LinkedHashMap<>(REMEMBERED, .75f, true);

    private final Map<Drawn, byte[]> drawn = new LinkedHashMap<>();
    private Page page;
    private OpenPage open;
    private Values last;
    private volatile OpenPage running;
    private volatile long since;
    private volatile long ended;
    private volatile boolean awake;

    Desk(Function<Page, OpenPage> opening) {
        this.opening = opening;
    }

    /** The run with these values, from memory if the page had them before. */
    synchronized Run run(Filled filled) {
        Values values = Values.of(filled);
        put(filled.page());
        Run known = runs.get(values);
        return known == null ? runNow(values, open::run) : known;
    }

    /** Runs the page in any case, since files that it reads may be others by now. */
    synchronized Run again(Filled filled) {
        put(filled.page());
        return runNow(Values.of(filled), open::run);
    }

    /** The same, with how each numeric step came to its value. */
    synchronized Run worked(Filled filled) {
        put(filled.page());
        return runNow(Values.of(filled), open::work);
    }

    /** What follows the inputs, by running the page again and again with others. */
    synchronized Propagation propagated(Filled filled, int draws) {
        put(filled.page());
        return busy(
                () ->
                        open.propagate(
                                Values.of(filled),
                                InputQuantity.of(filled),
                                draws,
                                AS_LONG_AS_IT_MAY));
    }

    /** The run with these values, if there was one and nothing has to be computed. */
    synchronized Optional<Run> known(Filled filled) {
        return filled.page().equals(page)
                ? Optional.ofNullable(runs.get(Values.of(filled)))
                : Optional.empty();
    }

    private Run runNow(Values values, Function<Values, Run> how) {
        Run run = busy(() -> how.apply(values));
        last = values;
        runs.remove(values);
        runs.put(values, run);
        if (runs.size() > REMEMBERED) {
            runs.remove(runs.keySet().iterator().next());
        }
        return run;
    }

    /** Does something that takes time, tells how far it is, and lets it be stopped. */
    private <T> T busy(Supplier<T> work) {
        since = System.nanoTime();
        running = open;
        awake = true;
        try {
            return work.get();
        } finally {
            ended = System.nanoTime();
            running = null;
        }
    }

    /** Lays this text of the page on the desk; another one than before is compiled anew. */
    private void put(Page wanted) {
        if (open != null && wanted.equals(page)) {
            return;
        }
        if (!wanted.equals(page)) {
            runs.clear();
        }
        rest();
        page = wanted;
        open = opening.apply(wanted);
    }

    /** A picture of the plot that a step gives with these values. */
    synchronized byte[] draw(Filled filled, int step, Size size) {
        Optional<Drawn> wanted =
                picture(run(filled), step).map(picture -> new Drawn(picture.digest(), size));
        byte[] known = wanted.map(drawn::get).orElse(null);
        if (known != null) {
            return known;
        }
        Values values = Values.of(filled);
        if (!values.equals(last)) {
            runNow(values, open::run);
        }
        byte[] png = open.draw(step, size.width(), size.height(), size.scale());
        wanted.ifPresent(key -> drawn.put(key, png));
        if (drawn.size() > PICTURES) {
            drawn.remove(drawn.keySet().iterator().next());
        }
        return png;
    }

    private static Optional<Shown.Picture> picture(Run run, int step) {
        return run.steps().stream()
                .filter(ran -> ran.step().index() == step)
                .map(Ran::outcome)
                .filter(Outcome.Done.class::isInstance)
                .map(outcome -> ((Outcome.Done) outcome).value())
                .filter(Shown.Picture.class::isInstance)
                .map(Shown.Picture.class::cast)
                .findFirst();
    }

    /** A plot as it was drawn. */
    private record Drawn(String digest, Size size) {}

    /** How large a plot is drawn: its layout (px), and dots for each px. */
    record Size(int width, int height, double scale) {}

    /** Stops what runs now. Never waits. */
    void stop() {
        OpenPage busy = running;
        if (busy != null) {
            busy.stop();
        }
    }

    /** What is going on: {@code 3 s, at step 12}; empty if nothing is. */
    Optional<String> progress() {
        OpenPage busy = running;
        if (busy == null) {
            return Optional.empty();
        }
        String seconds = (System.nanoTime() - since) / 1_000_000_000 + " s";
        OptionalInt at = busy.at();
        return Optional.of(
                at.isEmpty()
                        ? seconds + ", the page is being compiled"
                        : seconds + ", at step " + (at.getAsInt() + 1));
    }

    /** Whether it has a worker, which it takes for its first run. */
    boolean isAwake() {
        return awake;
    }

    /** How long ago its last run ended; nothing while it runs. */
    Duration idle() {
        return running == null ? Duration.ofNanos(System.nanoTime() - ended) : Duration.ZERO;
    }

    /** Gives its worker up, unless it is at work. */
    void restUnlessRunning() {
        if (running == null) {
            rest();
        }
    }

    /** Gives its worker up; the next run takes another. */
    synchronized void rest() {
        if (open != null) {
            open.close();
            open = null;
            last = null;
            awake = false;
        }
    }
}
