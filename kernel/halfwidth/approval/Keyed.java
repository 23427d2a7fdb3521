package halfwidth.approval;

/**
 * What is known of the key that a signature was given with.
 *
 * @param fingerprint of the key, for people; "" where it was signed with a name alone
 * @param fits whether the key was put under just what the signature says
 */
public record Keyed(String fingerprint, boolean fits) {
    /** Signed with a name alone, as older programs did. */
    public static final Keyed WITHOUT = new Keyed("", false);

    /** Whether somebody altered what a key was put under, or put another's key there. */
    public boolean isWrong() {
        return !fits && !equals(WITHOUT);
    }

    /** As in {@code with key 3f9a 0c1d 2e4b 90ab}. */
    public String words() {
        if (equals(WITHOUT)) {
            return "signed without a key";
        }
        return fits ? "with key " + fingerprint : "THE KEY DOES NOT FIT (" + fingerprint + ")";
    }
}
