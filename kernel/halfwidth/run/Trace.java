package halfwidth.run;

import java.io.Serializable;
import java.util.List;

/**
 * Where a value comes from.
 *
 * @param inputs the inputs and tables that it may rest on, by the names that its steps use
 * @param steps the steps that it may rest on, by index, its own among them
 * @param responses the inputs that move it, in the order of {@link Propagation#inputs}
 */
public record Trace(List<String> inputs, List<Integer> steps, List<Response> responses)
        implements Serializable {
    public Trace {
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        responses = List.copyOf(responses);
    }

    /** The same with what moves it. */
    public Trace with(List<Response> moving) {
        return new Trace(inputs, steps, moving);
    }
}
