package halfwidth.show;

/** Counts in words. */
public final class Counted {
    private Counted() {}

    /** {@code 1 step} or {@code 3 steps}. */
    public static String of(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
