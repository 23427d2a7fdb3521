package halfwidth.formula;

import java.io.Serializable;
import java.util.List;

/**
 * What a statement computes.
 *
 * @param name the variable or method that it declares or assigns
 * @param parameters of a method; empty for a variable
 * @param method whether it is a method, whose formula holds wherever it is called
 * @param term how it is computed
 */
public record Formula(String name, List<String> parameters, boolean method, Term term)
        implements Serializable {
    public Formula {
        parameters = List.copyOf(parameters);
    }

    /** Whether it says more than the Java does: not so for a part that has no form of its own. */
    public boolean complete() {
        return Terms.complete(term);
    }
}
