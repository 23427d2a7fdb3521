package halfwidth.proof;

import halfwidth.run.Proof;
import java.util.Optional;

/**
 * What was found of a statement's unit.
 *
 * @param refused why its stated unit cannot be right; empty if nothing speaks against it
 */
public record Finding(Proof proof, Optional<String> refused) {
    static Finding proved() {
        return new Finding(Proof.PROVED, Optional.empty());
    }

    static Finding open(String why) {
        return new Finding(Proof.not(why), Optional.empty());
    }

    static Finding refused(String why) {
        return new Finding(Proof.not(why), Optional.of(why));
    }
}
