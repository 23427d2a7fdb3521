package halfwidth.engine;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Collects what steps print, up to a limit for each run. */
final class Capture extends OutputStream {
    /** Ends the step that prints too much. An Error, so that a step does not catch it by habit. */
    static final class Full extends Error {
        Full(int limit) {
            super("more than " + limit + " bytes printed", null, false, false);
        }
    }

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private int limit;
    private int total;

    PrintStream stream() {
        return new PrintStream(this, true, StandardCharsets.UTF_8);
    }

    synchronized void reset(int newLimit) {
        bytes.reset();
        total = 0;
        limit = newLimit;
    }

    /** What was printed since the last call. */
    synchronized String take() {
        String text = bytes.toString(StandardCharsets.UTF_8);
        bytes.reset();
        return text;
    }

    @Override
    public synchronized void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] buffer, int offset, int length) {
        total = total > limit ? total : total + length;
        if (total > limit) {
            throw new Full(limit);
        }
        bytes.write(buffer, offset, length);
    }
}
