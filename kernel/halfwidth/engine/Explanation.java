package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.vocabulary.EntryFault;

/** Puts what a step threw into a technician's words, with the advice that goes with it. */
final class Explanation {
    private static final String LOOK_ABOVE = "Look at the values that the steps above it gave.";

    private Explanation() {}

    /**
     * Explains a throwable.
     *
     * @param line the line of the page where it was thrown
     */
    static Outcome.Failed of(Throwable thrown, int line) {
        String detail = thrown.toString();
        if (thrown instanceof EntryFault fault) {
            return new Outcome.Failed(
                    line, sentence(fault.getMessage()), "", "Correct the entry.", fault.place());
        }
        if (thrown instanceof IllegalArgumentException && thrown.getMessage() != null) {
            // Our own library and the entry of values refuse in words meant for the reader.
            return new Outcome.Failed(
                    line,
                    "A value was refused: " + thrown.getMessage() + ".",
                    detail,
                    "Check the inputs and readings that this step uses.");
        }
        if (thrown instanceof Capture.Full) {
            return new Outcome.Failed(
                    line,
                    "The step printed without end: " + thrown.getMessage() + ".",
                    detail,
                    "Print less, or raise the output limit.");
        }
        if (thrown instanceof OutOfMemoryError) {
            return new Outcome.Failed(
                    line,
                    "The step needs more memory than the page may use (%d MB)."
                            .formatted(Runtime.getRuntime().maxMemory() >> 20),
                    detail,
                    "Make its arrays or tables smaller, or raise the memory limit.");
        }
        return new Outcome.Failed(line, reason(thrown), detail, LOOK_ABOVE);
    }

    private static String reason(Throwable thrown) {
        if (thrown instanceof ArithmeticException) {
            return "The arithmetic has no answer: " + thrown.getMessage() + ".";
        }
        if (thrown instanceof IndexOutOfBoundsException) {
            return "The step asks for a row or an item that is not there.";
        }
        if (thrown instanceof NullPointerException) {
            return "The step uses a value that is not there: a blank reading, perhaps.";
        }
        if (thrown instanceof AssertionError) {
            return "What the page asserts is not so.";
        }
        if (thrown instanceof StackOverflowError) {
            return "A method on this page calls itself without end.";
        }
        return "The step failed.";
    }

    private static String sentence(String message) {
        return message.matches("(?s).*[.?!]") ? message : message + ".";
    }

    /** NaN or infinity where a number should be. */
    static Outcome.Failed notANumber(double value, int line) {
        return new Outcome.Failed(
                line,
                Double.isNaN(value) ? "The result is not a number." : "The result is infinite.",
                "",
                "A reading that it uses is blank, or it divides by zero. " + LOOK_ABOVE);
    }
}
