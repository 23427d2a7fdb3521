package halfwidth.vocabulary;

import java.io.Serializable;
import java.util.Objects;

/**
 * What to do next, as one value: what, on what and how much, or nothing and why. A result that is a
 * figure of an action names it in the column {@code shown} of the page's results and is shown only
 * while the action has an amount, so that no figure can stand beside an advice that denies it.
 *
 * @param state whether there is something to do
 * @param words what to do, or why there is nothing to do, in a sentence or two
 * @param on what it is done on, as in "CSB feed"; "" where there is nothing to do
 * @param amount how much of it (in {@code unit}); NaN where the action has none, as for one more
 *     reading
 * @param unit the unit of the amount, "1" for a plain number, "" where there is none
 */
public record Action(State state, String words, String on, double amount, String unit)
        implements Serializable {

    /** Whether there is something to do. */
    public enum State {
        /** Nothing may be done before what the words name is settled. */
        HELD("held"),
        /** There is something to do. */
        TO_DO("to do"),
        /** Nothing is left to do. */
        FINISHED("finished");

        private final String word;

        State(String word) {
            this.word = word;
        }

        /** The state in words, as in "to do". */
        public String word() {
            return word;
        }
    }

    /**
     * @throws IllegalArgumentException if the words are blank; something is to be done on nothing,
     *     or nothing on something; an amount is infinite, or stands without a unit or where there
     *     is nothing to do
     */
    public Action {
        Objects.requireNonNull(state, "state");
        boolean toDo = state == State.TO_DO;
        refuseIf(words.isBlank(), "an action must say what to do, or why nothing");
        refuseIf(toDo == on.isBlank(), "an action names what it is done on, and nothing else does");
        refuseIf(Double.isInfinite(amount), "the amount of an action must be finite");
        refuseIf(
                Double.isNaN(amount) != unit.isEmpty(), "an amount has a unit, and only an amount");
        refuseIf(!toDo && !Double.isNaN(amount), "where nothing is to be done there is no amount");
    }

    private static void refuseIf(boolean wrong, String message) {
        if (wrong) {
            throw new IllegalArgumentException(message);
        }
    }

    /**
     * Something to do by an amount: to cut, set or turn.
     *
     * @param words the whole advice, amount included
     * @param on what it is done on
     * @param amount how much, finite (in {@code unit})
     * @param unit its unit, "1" for a plain number
     * @throws IllegalArgumentException if the words or what it is done on are blank, the unit is
     *     empty, or the amount is not finite
     */
    public static Action toDo(String words, String on, double amount, String unit) {
        refuseIf(!Double.isFinite(amount), "the amount of an action must be finite");
        return new Action(State.TO_DO, words, on, amount, unit);
    }

    /**
     * Something to do that has no amount: to read, to look, to clear up.
     *
     * @param words the whole advice
     * @param on what it is done on
     * @throws IllegalArgumentException if either is blank
     */
    public static Action toDo(String words, String on) {
        return new Action(State.TO_DO, words, on, Double.NaN, "");
    }

    /**
     * Nothing is left to do.
     *
     * @param words why
     * @throws IllegalArgumentException if the words are blank
     */
    public static Action finished(String words) {
        return new Action(State.FINISHED, words, "", Double.NaN, "");
    }

    /**
     * Nothing may be done before something is settled.
     *
     * @param words what is to be settled
     * @throws IllegalArgumentException if the words are blank
     */
    public static Action held(String words) {
        return new Action(State.HELD, words, "", Double.NaN, "");
    }

    /** Whether it says how much: only then its figures are shown. */
    public boolean hasAmount() {
        return !Double.isNaN(amount);
    }

    /** The advice, so that an action joined into a text reads as one. */
    @Override
    public String toString() {
        return words;
    }
}
