package halfwidth.localizer.limits;

/**
 * Where a figure is published.
 *
 * @param document the document
 * @param section the place in it; empty if not known
 * @param status how sure the figure is
 * @param note what to mind; empty if nothing
 */
public record Source(String document, String section, Status status, String note) {

    /** How sure a figure is. */
    public enum Status {
        /** Read in the text of the document, or of one that repeats it word for word. */
        CONFIRMED("confirmed"),
        /** Read in a text that quotes the document. */
        SECOND_HAND("second-hand"),
        /** Computed from other figures. */
        DERIVED("derived"),
        /** Not seen in a text: look it up before relying on it. */
        FROM_MEMORY("from memory");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /**
         * Returns the status as the table writes it.
         *
         * @return the words
         */
        public String words() {
            return words;
        }

        static Status of(String words) {
            for (Status status : values()) {
                if (status.words.equals(words)) {
                    return status;
                }
            }
            throw new IllegalArgumentException(
                    "status \""
                            + words
                            + "\" must be confirmed, second-hand, derived or from memory");
        }
    }

    /**
     * @throws IllegalArgumentException if {@code document} is blank
     */
    public Source {
        if (document.isBlank()) {
            throw new IllegalArgumentException("document must not be blank");
        }
    }

    /**
     * Returns the citation with how sure it is.
     *
     * @return for example "ICAO Annex 10 Vol I, 3.1.3.7.1 (second-hand)"
     */
    public String citation() {
        String place = section.isBlank() ? document : document + ", " + section;
        return place + " (" + status.words() + ")";
    }

    /** The citation, which is how a page shows where a limit comes from. */
    @Override
    public String toString() {
        return citation();
    }
}
