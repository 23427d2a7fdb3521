package halfwidth.adapt;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Which bytes a page's file held when it was read.
 *
 * @param digest their SHA-256 in hexadecimal digits, so that an edit shows whatever the clock says;
 *     "" if there is no file
 */
public record Version(String digest) {
    static final Version NONE = new Version("");

    static Version of(byte[] bytes) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new Version(HexFormat.of().formatHex(sum));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
