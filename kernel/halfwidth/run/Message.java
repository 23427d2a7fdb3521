package halfwidth.run;

import java.io.ObjectInputFilter;
import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** What goes over the pipe between the program and a worker, each way. */
public sealed interface Message extends Serializable {
    /**
     * What either end takes from the pipe: the messages and the values in them, of no other class,
     * so that page code that got hold of the pipe could not have anything else read.
     */
    ObjectInputFilter FILTER =
            ObjectInputFilter.Config.createFilter(
                    "maxdepth=1000;halfwidth.run.*;halfwidth.formula.*;halfwidth.vocabulary.*;"
                            + "halfwidth.localizer.array.NamedArray;"
                            + "java.io.Serializable;java.lang.*;java.time.*;java.util.*;!*");

    /**
     * To the worker: compile this page in a fresh engine.
     *
     * @param bounded whether its steps are held within the bounds of page code
     */
    record Open(Script script, int outputLimit, boolean bounded) implements Message {}

    /** From the worker: compiled; the steps are listed when the page runs. */
    record Opened() implements Message {}

    /**
     * To the worker: run the open page.
     *
     * @param barred steps, by index among all statements, not to run, with what to say of them
     * @param workings whether to tell how each step came to its value
     */
    record Go(Values values, Map<Integer, Outcome.Failed> barred, boolean workings)
            implements Message {}

    /**
     * From the worker: the page ran.
     *
     * @param spoiled whether the run left the worker in a state not fit for another (a thread left
     *     running, memory exhausted)
     */
    record Ran(Run run, boolean spoiled) implements Message {}

    /**
     * To the worker: run the open page with changed inputs, to see what follows them.
     *
     * @param inputs what to change, each by its step
     * @param draws how often to draw all uncertain inputs at random; 0 for not at all
     * @param seed where the random numbers start
     * @param time after which to leave the rest
     */
    record Propagate(
            Values values,
            Map<Integer, Outcome.Failed> barred,
            List<InputQuantity> inputs,
            int draws,
            long seed,
            Duration time)
            implements Message {}

    /** From the worker: what follows the inputs. {@code spoiled} as in {@link Ran}. */
    record Propagated(Propagation propagation, boolean spoiled) implements Message {}

    /** To the worker: draw the plot that a statement, by index, gave in the last run. */
    record Draw(int statement, int width, int height, double scale) implements Message {}

    /** From the worker: the picture, or why it could not be drawn. */
    record Drawn(byte[] png, String problem) implements Message {}

    /** To the worker: what is the page's thread doing? Answered even while a step runs. */
    record Look() implements Message {}

    /** From the worker: the state of the page's thread. */
    record Seen(boolean deadlocked, Thread.State state) implements Message {}

    /** From the worker: it could not answer, through a fault of the kernel's own. */
    record Broken(String trace) implements Message {}
}
