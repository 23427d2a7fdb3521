package halfwidth.run;

import java.io.Serializable;

/**
 * Whether the unit that a numeric step states follows from the units of what it uses.
 *
 * @param proved whether it does
 * @param why why this could not be worked out; "" if it is proved
 */
public record Proof(boolean proved, String why) implements Serializable {
    public static final Proof PROVED = new Proof(true, "");

    /** The unit of a step could not be worked out. */
    public static Proof not(String why) {
        return new Proof(false, why);
    }
}
