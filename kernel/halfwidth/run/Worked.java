package halfwidth.run;

import halfwidth.formula.Formula;
import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * How a step came to its value.
 *
 * @param formula what it computes; null where its Java has no form as a formula. Not optional,
 *     since it goes over the pipe
 * @param used the values that it really used, by their places in the formula and in the methods'
 * @param methods the page's own methods that it rests on, with their formulas
 * @param proof whether its unit follows
 */
public record Worked(Formula formula, Map<Integer, Shown> used, List<Formula> methods, Proof proof)
        implements Serializable {
    public Worked {
        used = Map.copyOf(used);
        methods = List.copyOf(methods);
    }
}
