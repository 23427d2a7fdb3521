package halfwidth.key;

/** Says why a key cannot be made, kept or read, and what to do. */
public final class KeyRefused extends RuntimeException {
    KeyRefused(String message) {
        super(message);
    }
}
