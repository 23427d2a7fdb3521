package halfwidth.command;

/** Ends a command with a message for the person who gave it, and exit status 1. */
final class Refused extends RuntimeException {
    Refused(String message) {
        super(message);
    }
}
