package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a browser is started with, which everybody on the machine may see. */
class InvitationTest {
    private static final String KEY = "0123456789abcdef";
    private static final String ADDRESS = "http://127.0.0.1:8047/key/" + KEY;

    @TempDir Path folder;

    @Test
    void leadsToTheAddressWithoutShowingItsKey() throws IOException {
        Path file = Invitation.write(folder, ADDRESS);
        assertFalse(file.toUri().toString().contains(KEY));
        assertTrue(Files.readString(file).contains("content=\"0;url=" + ADDRESS + "\""));
    }

    @Test
    void isForThisUserAlone() throws IOException {
        Path file = Invitation.write(folder, ADDRESS);
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            assertEquals(
                    PosixFilePermissions.fromString("rw-------"),
                    Files.getPosixFilePermissions(file));
        }
    }
}
