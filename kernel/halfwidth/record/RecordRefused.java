package halfwidth.record;

/** Says why a record cannot be written or read. */
public final class RecordRefused extends RuntimeException {
    RecordRefused(String message) {
        super(message);
    }
}
