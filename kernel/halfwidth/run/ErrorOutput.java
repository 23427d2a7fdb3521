package halfwidth.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** What a worker's JVM says beside the pipe: its beginning is kept, the rest is only read. */
final class ErrorOutput {
    private static final int KEPT = 500;

    private final StringBuilder kept = new StringBuilder();
    private final Thread reader;

    private ErrorOutput(InputStream in) {
        reader = new Thread(() -> read(in), "worker-errors");
        reader.setDaemon(true);
    }

    static ErrorOutput of(InputStream in) {
        ErrorOutput output = new ErrorOutput(in);
        output.reader.start();
        return output;
    }

    private void read(InputStream in) {
        byte[] bytes = new byte[1000];
        try (in) {
            for (int got = in.read(bytes); got >= 0; got = in.read(bytes)) {
                keep(new String(bytes, 0, got, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            // The process was ended.
        }
    }

    private synchronized void keep(String more) {
        kept.append(more, 0, Math.min(more.length(), KEPT - kept.length()));
    }

    /** What it said, in one line, once it has ended; else what it said within half a second. */
    String text() {
        try {
            reader.join(500);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        synchronized (this) {
            return kept.toString().strip().replaceAll("\\s*\\R\\s*", "; ");
        }
    }
}
