package halfwidth.adapt;

/** Says that a page was changed by another window or editor since it was read. */
public final class ChangedElsewhere extends RuntimeException {
    ChangedElsewhere(String name) {
        super(
                "page "
                        + name
                        + " was changed by another window or editor since it was read; nothing was"
                        + " written");
    }
}
