package halfwidth.value;

/** Says that an entry was not understood: the message tells what is wrong and what to type. */
public final class EntryRefused extends RuntimeException {
    public EntryRefused(String message) {
        super(message);
    }
}
