package halfwidth.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SigningKeyTest {
    @TempDir private Path folder;

    private SigningKey key(String person) {
        return SigningKey.of(KeyFile.within(folder.resolve("keys"), person));
    }

    private Path onlyFile() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("keys"))) {
            List<Path> all = files.toList();
            assertEquals(1, all.size(), all.toString());
            return all.get(0);
        }
    }

    /** RFC 8032, section 7.1, test 2: the public key, the message 0x72 and its signature. */
    @Test
    void takesTheSignatureOfTheStandard() {
        HexFormat hex = HexFormat.of();
        byte[] raw =
                hex.parseHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
        byte[] signature =
                hex.parseHex(
                        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                                + "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
        // RFC 8410, section 4: the header of an Ed25519 public key.
        byte[] header = hex.parseHex("302a300506032b6570032100");
        byte[] encoded = Arrays.copyOf(header, header.length + raw.length);
        System.arraycopy(raw, 0, encoded, header.length, raw.length);
        Base64.Encoder base = Base64.getEncoder();
        KeyMark mark = new KeyMark(base.encodeToString(encoded), base.encodeToString(signature));
        assertTrue(mark.fits("r"));
        assertFalse(mark.fits("s"));
    }

    @Test
    void isMadeOnceForAPersonAndKept() throws IOException {
        SigningKey first = key("p reparer");
        KeyMark mark = first.sign("what is signed");
        assertTrue(mark.fits("what is signed"));
        assertFalse(mark.fits("what is Signed"));
        assertEquals(first.fingerprint(), key("p reparer").fingerprint());
        assertEquals(first.fingerprint(), mark.fingerprint());
        assertTrue(mark.fingerprint().matches("([0-9a-f]{4} ){3}[0-9a-f]{4}"), mark.fingerprint());
        onlyFile();
        assertNotEquals(first.fingerprint(), key("p. reparer").fingerprint());
    }

    @Test
    void isItsOwnersAlone() throws IOException {
        key("p reparer");
        Path file = onlyFile();
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        assertEquals(
                "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void aMarkWithoutAKeyOrWithADamagedOneFitsNothing() {
        KeyMark mark = key("p reparer").sign("text");
        assertFalse(KeyMark.NONE.fits(""));
        assertFalse(new KeyMark("", mark.signature()).fits("text"));
        assertFalse(new KeyMark(mark.key(), "").fits("text"));
        assertFalse(new KeyMark("%" + mark.key(), mark.signature()).fits("text"));
        assertFalse(new KeyMark(key("another").sign("text").key(), mark.signature()).fits("text"));
    }

    @Test
    void refusesADamagedFileAndSaysWhatToDo() throws IOException {
        key("p reparer");
        Path file = onlyFile();
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, 60));
        assertRefused("holds no key to sign with any more");
        assertEquals(60, Files.size(file), "it is not written over");
        Files.writeString(file, text.replace("-----BEGIN PUBLIC", "-----BEGIN OTHER"));
        assertRefused("take it out of the folder");
    }

    @Test
    void refusesAFolderThatCannotBeWritten() throws IOException {
        Files.writeString(folder.resolve("keys"), "a file where the folder would be");
        assertRefused("cannot be kept in");
    }

    private void assertRefused(String words) {
        String refusal = assertThrows(KeyRefused.class, () -> key("p reparer")).getMessage();
        assertTrue(refusal.contains(words), refusal);
    }
}
