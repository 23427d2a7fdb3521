package halfwidth.show;

/** Counts in words. */
final class Counted {
    private Counted() {}

    /** {@code 1 step} or {@code 3 steps}. */
    static String of(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
