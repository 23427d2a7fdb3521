package halfwidth.run;

import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * What the inputs of a page do to its steps and results, by running it with changed inputs.
 *
 * @param inputs every measured number of the page
 * @param moved how many of them, from the first on, were changed before the time was over
 * @param steps by index, where the value of each numeric step comes from
 * @param results by name, the same of each numeric result
 * @param turns the decisions that fall otherwise within one step of an input
 * @param draws by name, how each numeric result spreads when all uncertain inputs are drawn at
 *     random; empty unless asked for
 * @param drawsAsked how many draws were asked for; fewer are made where the time is over before
 */
public record Propagation(
        List<InputQuantity> inputs,
        int moved,
        Map<Integer, Trace> steps,
        Map<String, Trace> results,
        List<Turn> turns,
        Map<String, Drawn> draws,
        int drawsAsked)
        implements Serializable {

    /** What random draws to ask for: with fewer, the interval says nothing (JCGM 101:2008, 7.2). */
    public static final int FEWEST_DRAWS = 1000;

    public static final int MOST_DRAWS = 100_000;

    /**
     * A decision that falls otherwise.
     *
     * @param input by its place in {@code inputs}
     * @param step the index of the first step that shows it
     * @param up whether it does so one step above, else one step below
     */
    public record Turn(int input, int step, boolean up) implements Serializable {}

    /** Whether any input has a standard uncertainty. */
    public boolean uncertain() {
        return inputs.stream().anyMatch(input -> input.standardUncertainty() > 0);
    }

    /** Whether every input was changed. */
    public boolean complete() {
        return moved == inputs.size();
    }

    /** How many draws were made. */
    public int drawsMade() {
        return draws.values().stream()
                .mapToInt(drawn -> drawn.draws() + drawn.without())
                .max()
                .orElse(0);
    }
}
