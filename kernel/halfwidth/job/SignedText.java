package halfwidth.job;

import halfwidth.approval.Keyed;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * What a key is put under: all that a signature says. Whoever alters a word of it, its time or what
 * stood against it, or carries it to another record, needs the key again.
 */
public final class SignedText {
    private static final String FORM = "Halfwidth signature 1";

    private SignedText() {}

    /**
     * The text.
     *
     * @param time as its line says
     * @param against what stood against it, in words; "" if nothing did
     * @param reason why it was signed in spite of that; ""
     */
    public static String of(
            Fact.Signed signed, OffsetDateTime time, String against, String reason) {
        StringBuilder text = new StringBuilder(FORM).append('\n');
        List.of(
                        signed.visit().page(),
                        signed.visit().name(),
                        signed.file(),
                        signed.digest(),
                        signed.content(),
                        signed.role().words(),
                        signed.by(),
                        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time),
                        signed.remark(),
                        against,
                        reason)
                .forEach(part -> put(text, part));
        return text.toString();
    }

    /** Lengths first, so that no part can pass for two. */
    private static void put(StringBuilder text, String part) {
        text.append(part.length()).append(':').append(part).append('\n');
    }

    /** Whether a key is put under it, and fits. */
    static Keyed keyed(Fact.Signed signed, OffsetDateTime time, String against, String reason) {
        if (!signed.mark().isThere()) {
            return Keyed.WITHOUT;
        }
        boolean fits = signed.mark().fits(of(signed, time, against, reason));
        return new Keyed(signed.mark().fingerprint(), fits);
    }
}
