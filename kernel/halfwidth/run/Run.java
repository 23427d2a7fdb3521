package halfwidth.run;

import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * One run of a page from top to bottom.
 *
 * @param steps every step with its outcome, in the order of the page
 * @param checks every check with its outcome, in order; empty unless the worked example ran. A
 *     check that holds is {@code Done(Flag(true))}, one that does not is {@code Failed}
 * @param finals the value that each variable named by the page's results (the result itself, its
 *     limits, its uncertainty) had at the end; absent where it was not computed
 * @param worked how each numeric step came to its value, by the step's index; empty unless asked
 *     for
 * @param rows how steps came to their rows, by the step's index; empty unless asked for
 */
public record Run(
        List<Ran> steps,
        List<Ran> checks,
        Map<String, Shown> finals,
        Map<Integer, Worked> worked,
        Map<Integer, List<Rows>> rows)
        implements Serializable {
    /** A run that was not asked for its workings. */
    public Run(List<Ran> steps, List<Ran> checks, Map<String, Shown> finals) {
        this(steps, checks, finals, Map.of(), Map.of());
    }

    /** A step and what became of it. */
    public record Ran(Step step, Outcome outcome) implements Serializable {}
}
