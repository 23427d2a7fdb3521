package halfwidth.record;

import halfwidth.job.Fingerprint;
import halfwidth.show.HtmlSheet;
import java.nio.charset.StandardCharsets;

/**
 * The digest of a record that stands in the record itself: SHA-256 of the file with zeros where the
 * digest stands. It tells accidents and later edits; against forgery it is no proof, since who
 * edits the file can compute it anew: there the digests in the journal and on paper count.
 */
final class Seal {
    private static final String PLACE = "id=\"seal\">";

    private Seal() {}

    /** Puts the digest into its place. */
    static String close(String html) {
        int at = at(html);
        int behind = at + HtmlSheet.UNSEALED.length();
        return html.substring(0, at) + Fingerprint.of(html) + html.substring(behind);
    }

    /** Whether there is such a digest, right or not. */
    static boolean isThere(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1).contains(PLACE);
    }

    /** Whether the file is as it was written, but for its line ends. */
    static boolean holds(byte[] file) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        int at = at(text);
        int behind = at + HtmlSheet.UNSEALED.length();
        if (at < PLACE.length() || behind > text.length()) {
            return false;
        }
        byte[] bytes = unsealed(text).getBytes(StandardCharsets.ISO_8859_1);
        return text.substring(at, behind).equals(Fingerprint.of(bytes));
    }

    /** A record's text with zeros where the digest stands, if there is any. */
    static String opened(byte[] file) {
        byte[] bytes = file;
        if (isThere(file)) {
            String text = unsealed(new String(file, StandardCharsets.ISO_8859_1));
            bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static String unsealed(String text) {
        int at = at(text);
        int behind = Math.min(at + HtmlSheet.UNSEALED.length(), text.length());
        return text.substring(0, at) + HtmlSheet.UNSEALED + text.substring(behind);
    }

    private static int at(String text) {
        return text.lastIndexOf(PLACE) + PLACE.length();
    }
}
