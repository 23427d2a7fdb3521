package halfwidth.run;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;

/** A page in its worker. Runs one set of values at a time; calls from several threads queue. */
public final class OpenPage implements AutoCloseable {
    /** Compiling a page takes seconds, be it the first on a busy machine. */
    private static final Duration COMPILATION = Duration.ofMinutes(2);

    /** A page with more runaway steps than this is not worth more attempts. */
    private static final int ATTEMPTS = 5;

    /** Where random draws start, so that the same values give the same figures. */
    public static final long SEED = 20081;

    private final Workshop workshop;
    private final Script script;
    private final boolean bounded;
    private Worker worker;

    /** The worker that is running the page now; null while none is. */
    private volatile Worker busy;

    private volatile boolean stopped;

    OpenPage(Workshop workshop, Script script, boolean bounded) {
        this.workshop = workshop;
        this.script = script;
        this.bounded = bounded;
    }

    /**
     * Runs the page from top to bottom with these values. A step that overruns the budget, or takes
     * its worker down with it, is reported as failed, and the page runs again without it, so that
     * the steps that do not depend on it still give their values.
     *
     * @throws PageLost if the page cannot be run at all
     */
    public Run run(Values values) {
        return run(values, false);
    }

    /**
     * Runs the page like {@link #run} and tells how each numeric step came to its value.
     *
     * @throws PageLost if the page cannot be run at all
     */
    public Run work(Values values) {
        return run(values, true);
    }

    private Run run(Values values, boolean workings) {
        return ask(
                        barred -> new Message.Go(values, barred, workings),
                        Message.Ran.class,
                        Message.Ran::spoiled)
                .run();
    }

    /**
     * Runs the page again and again with changed inputs and tells what follows them. What {@link
     * #draw} shows stays that of the last run.
     *
     * @param inputs what to change
     * @param draws how often to draw all uncertain inputs at random besides, up to 100,000; 0 for
     *     not at all
     * @param time after which to leave the rest; never more than half of what one run may take
     * @throws PageLost if the page cannot be run at all
     */
    public Propagation propagate(
            Values values, List<InputQuantity> inputs, int draws, Duration time) {
        Duration half = workshop.budget().time().dividedBy(2);
        Duration most = time.compareTo(half) < 0 ? time : half;
        return ask(
                        barred -> new Message.Propagate(values, barred, inputs, draws, SEED, most),
                        Message.Propagated.class,
                        Message.Propagated::spoiled)
                .propagation();
    }

    private synchronized <T extends Message> T ask(
            Function<Map<Integer, Outcome.Failed>, Message> question,
            Class<T> kind,
            Predicate<T> spoiled) {
        Map<Integer, Outcome.Failed> barred = new HashMap<>();
        int idleLosses = 0;
        stopped = false;
        while (true) {
            try {
                boolean fresh = worker == null;
                if (fresh) {
                    worker = workshop.take(bounded);
                }
                busy = worker;
                if (fresh) {
                    Message.Open open =
                            new Message.Open(script, workshop.budget().outputBytes(), bounded);
                    worker.ask(open, Message.Opened.class, compilation());
                }
                Message message = question.apply(Map.copyOf(barred));
                T answer = worker.ask(message, kind, workshop.budget().time());
                if (spoiled.test(answer)) {
                    worker.close();
                    worker = null;
                }
                return answer;
            } catch (WorkerLost lost) {
                worker = null;
                boolean idle = lost.statement() < 0;
                if (stopped) {
                    stopped = false;
                    bar(barred, lost.byHand());
                } else if (!idle || ++idleLosses > 1) {
                    bar(barred, lost);
                } // else no step did it: it was ended from outside while it waited, once
            } finally {
                busy = null;
            }
        }
    }

    /** What a run may take, or longer where that is little: most pages are only compiled once. */
    private Duration compilation() {
        Duration run = workshop.budget().time();
        return run.compareTo(COMPILATION) > 0 ? run : COMPILATION;
    }

    private static void bar(Map<Integer, Outcome.Failed> barred, WorkerLost lost) {
        boolean again = lost.statement() >= 0 && !barred.containsKey(lost.statement());
        if (!again || barred.size() >= ATTEMPTS) {
            throw new PageLost(lost.reason() + " " + lost.advice());
        }
        barred.put(lost.statement(), new Outcome.Failed(0, lost.reason(), "", lost.advice()));
    }

    /**
     * Stops the step that is running now, if any, for good; the others are run as if it had failed.
     * Never waits.
     */
    public void stop() {
        Worker running = busy;
        if (running != null) {
            stopped = true;
            running.end();
        }
    }

    /** The index of the step that is running now; empty if none is. */
    public OptionalInt at() {
        Worker running = busy;
        int statement = running == null ? -1 : running.statement();
        return statement < 0 ? OptionalInt.empty() : OptionalInt.of(statement);
    }

    /**
     * Draws a plot of the last run.
     *
     * @param index the step that gave it
     * @param scale pixels per unit of width and height
     * @return a PNG picture
     * @throws PageLost if that step gave no plot, or it cannot be drawn
     */
    public synchronized byte[] draw(int index, int width, int height, double scale) {
        if (worker == null) {
            throw new PageLost("The page's worker is gone; run the page again to draw its plots.");
        }
        try {
            Message.Drawn drawn =
                    worker.ask(
                            new Message.Draw(index, width, height, scale),
                            Message.Drawn.class,
                            workshop.budget().time());
            if (!drawn.problem().isEmpty()) {
                throw new PageLost("The plot could not be drawn: " + drawn.problem() + ".");
            }
            return drawn.png();
        } catch (WorkerLost lost) {
            worker = null;
            throw new PageLost(lost.reason());
        }
    }

    /** Gives the page's worker up. */
    @Override
    public synchronized void close() {
        if (worker != null) {
            workshop.giveBack(worker);
            worker = null;
        }
    }
}
