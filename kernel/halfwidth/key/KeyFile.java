package halfwidth.key;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The file of one person's key. Nobody but its owner may read it, where the file system knows
 * owners.
 */
record KeyFile(Path file) {
    private static final int LONGEST_NAME = 40;
    private static final int DIGITS = 6;

    static KeyFile ofThisUser(String person) {
        Path home = Path.of(System.getProperty("user.home"));
        return within(home.resolve(".halfwidth").resolve("keys"), person);
    }

    /**
     * A readable name may be that of two people, so a digest of the whole name stands behind it.
     */
    static KeyFile within(Path folder, String person) {
        String plain = person.replaceAll("[^A-Za-z0-9]", "");
        String brief = plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        return new KeyFile(folder.resolve(brief + "-" + digest(person) + ".key"));
    }

    private static String digest(String person) {
        try {
            byte[] name = person.getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(name);
            return HexFormat.of().formatHex(digest, 0, DIGITS);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** What it holds; empty if it is not there. */
    Optional<String> read() throws IOException {
        boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        return there
                ? Optional.of(Files.readString(file, StandardCharsets.ISO_8859_1))
                : Optional.empty();
    }

    /** Makes it, unless another process was faster; returns what it holds then. */
    String make(Supplier<String> content) throws IOException {
        Files.createDirectories(file.getParent());
        String text = content.get();
        // A temporary file is its owner's alone from the start, where the system knows owners.
        Path part = Files.createTempFile(file.getParent(), "key", ".part");
        try {
            Files.writeString(
                    part,
                    text,
                    StandardCharsets.ISO_8859_1,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.SYNC);
            put(part);
        } catch (FileAlreadyExistsException faster) {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } finally {
            Files.deleteIfExists(part);
        }
        return text;
    }

    /** Not moved, where that can be helped: it would replace a key that another process made. */
    private void put(Path part) throws IOException {
        try {
            Files.createLink(file, part);
        } catch (FileAlreadyExistsException faster) {
            throw faster;
        } catch (IOException | UnsupportedOperationException noLinks) {
            Files.move(part, file);
        }
    }

    @Override
    public String toString() {
        return file.toString();
    }
}
