package halfwidth.run;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Stands before the first message of a worker. Options that are set for every Java of a machine
 * make its JVM print on standard output while it starts; whatever comes before the mark is left.
 */
public final class StartMark {
    /** Its first byte stands nowhere else in it. */
    private static final byte[] MARK =
            "\0halfwidth worker starts\n".getBytes(StandardCharsets.US_ASCII);

    private StartMark() {}

    /** Writes the mark. */
    public static void write(OutputStream out) throws IOException {
        out.write(MARK);
    }

    /** Reads up to the mark and past it; false if the stream ends before. */
    static boolean skip(InputStream in) throws IOException {
        int matched = 0;
        while (matched < MARK.length) {
            int got = in.read();
            if (got < 0) {
                return false;
            }
            if (got == MARK[matched]) {
                matched++;
            } else {
                matched = got == MARK[0] ? 1 : 0;
            }
        }
        return true;
    }
}
