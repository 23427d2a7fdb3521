package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What a JVM prints before its worker speaks is left; what comes after is untouched. */
class StartMarkTest {
    private static final byte[] MESSAGE = {1, 0, 2};

    private static byte[] mark() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StartMark.write(out);
        return out.toByteArray();
    }

    private static InputStream pipe(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return new ByteArrayInputStream(all.toByteArray());
    }

    private static void assertFound(byte[]... before) throws IOException {
        for (byte[] one : before) {
            InputStream in = pipe(one, mark(), MESSAGE);
            assertTrue(StartMark.skip(in));
            assertArrayEquals(MESSAGE, in.readAllBytes());
        }
    }

    @Test
    void nothingOrLinesOfALogMayStandBefore() throws IOException {
        assertFound(new byte[0], "[0.1s][info] Started\n".getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aMarkThatBreaksOffMayStandBefore() throws IOException {
        byte[] mark = mark();
        for (int length = 1; length < mark.length; length++) {
            assertFound(java.util.Arrays.copyOf(mark, length));
        }
    }

    @Test
    void aStreamWithoutItIsReadToItsEnd() throws IOException {
        byte[] mark = mark();
        assertFalse(StartMark.skip(pipe("Error: no heap\n".getBytes(StandardCharsets.UTF_8))));
        assertFalse(StartMark.skip(pipe(java.util.Arrays.copyOf(mark, mark.length - 1))));
    }
}
