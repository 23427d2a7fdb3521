package halfwidth.web;

/**
 * A cell of a table of readings.
 *
 * @param typed as typed; "" if it is blank
 * @param understood how it was understood
 * @param reason why it is blank; "" if it is not or none was given
 */
record Cell(String typed, String understood, String reason) {
    /** Whether nothing is known of it, not even why. */
    boolean isBlank() {
        return typed.isBlank() && reason.isEmpty();
    }
}
