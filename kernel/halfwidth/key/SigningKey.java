package halfwidth.key;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The key pair that a person signs with. Its file holds both keys as PEM writes them (RFC 7468).
 */
public final class SigningKey {
    private static final String PRIVATE = "PRIVATE KEY";
    private static final String PUBLIC = "PUBLIC KEY";

    private final PrivateKey secret;
    private final String known;

    private SigningKey(PrivateKey secret, String known) {
        this.secret = secret;
        this.known = known;
    }

    /**
     * The key of a person in the home of this machine's user; it is made if there is none.
     *
     * @param person tells the person from any other
     * @throws KeyRefused if it cannot be made, kept or read
     */
    public static SigningKey of(String person) {
        return of(KeyFile.ofThisUser(person));
    }

    static SigningKey of(KeyFile file) {
        try {
            Optional<String> there = file.read();
            return read(there.isPresent() ? there.get() : file.make(SigningKey::made), file);
        } catch (IOException e) {
            throw new KeyRefused(
                    "The key to sign with cannot be kept in %s: %s. Nothing is signed; see to it that"
                                    .formatted(file, e)
                            + " this folder can be written.");
        }
    }

    private static String made() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(KeyMark.ALGORITHM).generateKeyPair();
            return pem(PRIVATE, pair.getPrivate().getEncoded())
                    + pem(PUBLIC, pair.getPublic().getEncoded());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java from 15 on has Ed25519", e);
        }
    }

    private static String pem(String what, byte[] encoded) {
        String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(encoded);
        return "-----BEGIN %s-----\n%s\n-----END %s-----\n".formatted(what, text, what);
    }

    private static SigningKey read(String text, KeyFile file) {
        try {
            PKCS8EncodedKeySpec secret =
                    new PKCS8EncodedKeySpec(Base64.getMimeDecoder().decode(part(PRIVATE, text)));
            KeyFactory factory = KeyFactory.getInstance(KeyMark.ALGORITHM);
            String known = part(PUBLIC, text).replaceAll("\\s", "");
            SigningKey key = new SigningKey(factory.generatePrivate(secret), known);
            if (key.sign(text).fits(text)) {
                return key;
            }
        } catch (GeneralSecurityException | IllegalArgumentException damaged) {
            // As below.
        }
        throw new KeyRefused(
                file
                        + " holds no key to sign with any more. Put back a copy of it; or take it out"
                        + " of the folder, and a new key is made, which others do not know yet.");
    }

    private static String part(String what, String text) {
        Pattern between =
                Pattern.compile("-----BEGIN " + what + "-----(.*?)-----END", Pattern.DOTALL);
        Matcher found = between.matcher(text);
        if (!found.find()) {
            throw new IllegalArgumentException("no " + what);
        }
        return found.group(1).strip();
    }

    /** Puts the key under a text. */
    public KeyMark sign(String text) {
        try {
            Signature signature = Signature.getInstance(KeyMark.ALGORITHM);
            signature.initSign(secret);
            signature.update(text.getBytes(StandardCharsets.UTF_8));
            return new KeyMark(known, Base64.getEncoder().encodeToString(signature.sign()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key that was read signs", e);
        }
    }

    /** As {@link KeyMark#fingerprint}. */
    public String fingerprint() {
        return new KeyMark(known, "").fingerprint();
    }
}
