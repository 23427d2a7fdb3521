package halfwidth.key;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;

/**
 * What a key left under a text: the public key, and an Ed25519 signature (RFC 8032) of the text.
 *
 * @param key the public key as X.509 encodes it, in Base64; "" where there is none
 * @param signature of the text in UTF-8, in Base64; "" where there is none
 */
public record KeyMark(String key, String signature) {
    /** Under what was signed with a name alone. */
    public static final KeyMark NONE = new KeyMark("", "");

    static final String ALGORITHM = "Ed25519";

    /** Sixteen digits are soon compared with those on paper; to meet them takes 2^64 keys. */
    private static final int SHORT_BYTES = 8;

    /** Whether there is a key at all, right or not. */
    public boolean isThere() {
        return !equals(NONE);
    }

    /** Whether the key was put under just this text. */
    public boolean fits(String text) {
        try {
            byte[] encoded = Base64.getDecoder().decode(key);
            KeyFactory factory = KeyFactory.getInstance(ALGORITHM);
            PublicKey known = factory.generatePublic(new X509EncodedKeySpec(encoded));
            Signature check = Signature.getInstance(ALGORITHM);
            check.initVerify(known);
            check.update(text.getBytes(StandardCharsets.UTF_8));
            return check.verify(Base64.getDecoder().decode(signature));
        } catch (GeneralSecurityException | IllegalArgumentException damaged) {
            return false;
        }
    }

    /**
     * The beginning of the key's SHA-256, as in {@code 3f9a 0c1d 2e4b 90ab}, to be compared by
     * people; "" where there is no key.
     */
    public String fingerprint() {
        if (key.isEmpty()) {
            return "";
        }
        try {
            byte[] text = key.getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text);
            String digits = HexFormat.of().formatHex(digest, 0, SHORT_BYTES);
            return digits.replaceAll("(.{4})(?!$)", "$1 ");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
