package halfwidth.show;

import halfwidth.page.Page;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZonedDateTime;
import java.util.HexFormat;

/**
 * What a sheet was made by and from.
 *
 * @param version the program's version
 * @param ran when the page was run
 * @param digest SHA-256 of the page's file, in hexadecimal
 * @param java the version of the Java that ran it
 */
public record Stamp(String version, ZonedDateTime ran, String digest, String java) {

    /** Stamps a page's file, as read, with the Java that runs this program. */
    public static Stamp of(String version, ZonedDateTime ran, byte[] file) {
        String digest = HexFormat.of().formatHex(sha256(file));
        return new Stamp(version, ran, digest, Runtime.version().toString());
    }

    /** Stamps a page that was run just now. */
    public static Stamp now(String version, Page page) {
        return of(version, ZonedDateTime.now(), page.text().getBytes(StandardCharsets.UTF_8));
    }

    /** The same on another Java. */
    public Stamp onJava(String version) {
        return new Stamp(this.version, ran, digest, version);
    }

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
