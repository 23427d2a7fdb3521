package halfwidth.job;

import halfwidth.vocabulary.Action;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One result as a run published it.
 *
 * @param name the result's name on the page
 * @param value the number, unrounded, or the words; "" if it has none
 * @param unit of the number; "" for words, "1" for a plain number
 * @param uncertainty its standard uncertainty in the same unit; "" if it has none
 * @param verdict whether it keeps its limits, in words, or why it has no value
 * @param shown the number at the decimals that its page shows; "" if that is not known
 */
public record Finding(
        String name, String value, String unit, String uncertainty, String verdict, String shown) {

    /** A finding of which it is not known how its page shows it. */
    public Finding(String name, String value, String unit, String uncertainty, String verdict) {
        this(name, value, unit, uncertainty, verdict, "");
    }

    /**
     * What a sheet says is to be done next: what holds it first, else the first thing to do, as the
     * verdicts of its actions name them.
     *
     * @param all what it found, in the page's order
     */
    public static Optional<String> next(Collection<Finding> all) {
        return Stream.of(Action.State.HELD, Action.State.TO_DO)
                .flatMap(state -> all.stream().filter(one -> one.verdict.equals(state.word())))
                .map(Finding::value)
                .findFirst();
    }

    /** What was found alone, as a record keeps it. */
    public Finding withoutLook() {
        return new Finding(name, value, unit, uncertainty, verdict);
    }
}
