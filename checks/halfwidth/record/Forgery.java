package halfwidth.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What somebody can do with a record who knows how it is made, but has no key. */
public final class Forgery {
    private static final Pattern SEAL = Pattern.compile("id=\"seal\">([0-9a-f]{64})");

    private Forgery() {}

    /** Where the seal stands: before it is what the sheet shows, behind it what is attached. */
    static int seal(String record) {
        return found(record).start();
    }

    /** The record with its seal by the definition: SHA-256 with zeros in the digest's place. */
    public static String sealed(String record) {
        Matcher seal = found(record);
        String before = record.substring(0, seal.start(1));
        String behind = record.substring(seal.end(1));
        return before + digest(before + "0".repeat(64) + behind) + behind;
    }

    /** SHA-256 in hexadecimal. */
    public static String digest(String text) {
        try {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    private static Matcher found(String record) {
        Matcher seal = SEAL.matcher(record);
        if (!seal.find()) {
            throw new AssertionError("no seal");
        }
        return seal;
    }
}
