package halfwidth.run;

import halfwidth.vocabulary.EntryPlace;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/** What became of a step. */
public sealed interface Outcome extends Serializable {
    /**
     * It ran.
     *
     * @param printed what it wrote to standard output
     */
    record Done(Shown value, String printed) implements Outcome {}

    /**
     * It did not run, since inputs or readings that it needs, itself or through earlier steps, are
     * not filled in.
     *
     * @param names their names, in the order of the page
     */
    record Waiting(List<String> names) implements Outcome {}

    /**
     * It did not run, since it needs, itself or through earlier steps, optional inputs or readings
     * that are left blank, and nothing else is missing.
     *
     * @param names their names, in the order of the page
     */
    record Skipped(List<String> names) implements Outcome {}

    /**
     * It did not run, since earlier steps that it needs failed.
     *
     * @param lines where those steps start
     */
    record Held(List<Integer> lines) implements Outcome {}

    /**
     * It failed.
     *
     * @param line the line in the page's file that failed, within the step
     * @param reason what is wrong, in a technician's words
     * @param detail the compiler's or the exception's own words, may be ""
     * @param advice what to do
     * @param entry the field or cell that it concerns, null if none is known (an optional cannot be
     *     sent over the worker's pipe)
     */
    record Failed(int line, String reason, String detail, String advice, EntryPlace entry)
            implements Outcome {
        /** A failure that concerns no single entry. */
        public Failed(int line, String reason, String detail, String advice) {
            this(line, reason, detail, advice, null);
        }

        /** The field or cell that the page refuses, where it says which. */
        public Optional<EntryPlace> refused() {
            return Optional.ofNullable(entry);
        }

        /** The same failure at another line. */
        public Failed at(int otherLine) {
            return new Failed(otherLine, reason, detail, advice, entry);
        }
    }
}
