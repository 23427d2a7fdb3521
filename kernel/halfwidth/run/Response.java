package halfwidth.run;

import java.io.Serializable;

/**
 * What one input does to one value.
 *
 * @param input the input, by its place in {@link Propagation#inputs}
 * @param sensitivity by how much the value changes with the input (unit of the value over unit of
 *     the input), between one step below and one above; on the one side where it has a value, else
 *     NaN
 * @param up by how much the value changes when the input is one step more (unit of the value); NaN
 *     if it has none there
 * @param down by how much it changes when the input is one step less, likewise
 * @param manner how the value follows
 */
public record Response(int input, double sensitivity, double up, double down, Manner manner)
        implements Serializable {

    /** How a value follows an input over one step to each side. */
    public enum Manner {
        /** Nearly straight: both sides differ by a tenth at most. */
        STRAIGHT,
        /** Not straight, so that first order is not enough. */
        BENT,
        /** Not straight, and a decision on the way to the value falls otherwise at one side. */
        TURNS,
        /** There is no value at one side. */
        ENDS
    }

    /** Whether first order says anything of it. */
    public boolean firstOrder() {
        return manner == Manner.STRAIGHT || manner == Manner.BENT;
    }
}
