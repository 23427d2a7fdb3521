package halfwidth.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * A file that leads a browser to the notebook. Whoever is on the machine may see what a browser was
 * started with, so that is the name of this file and not the address with its key.
 */
final class Invitation {
    /** A browser that starts slowly has read it by then. */
    private static final Duration KEPT = Duration.ofMinutes(2);

    private Invitation() {}

    /**
     * Writes it, for this user alone to read; it goes by itself.
     *
     * @param folder one that the browser may read, which it may not every folder for scratch files
     */
    static Path write(Path folder, String address) throws IOException {
        Path file = Files.createTempFile(folder, "halfwidth-", ".html");
        file.toFile().deleteOnExit();
        Thread cleaner = new Thread(() -> remove(file), "invitation");
        cleaner.setDaemon(true);
        cleaner.start();
        return Files.writeString(
                file,
                "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\">"
                        + "<meta name=\"referrer\" content=\"no-referrer\"><title>Halfwidth</title>"
                        + "<meta http-equiv=\"refresh\" content=\"0;url="
                        + address
                        + "\"></head><body><a href=\""
                        + address
                        + "\">Open the notebook</a></body></html>");
    }

    private static void remove(Path file) {
        try {
            Thread.sleep(KEPT.toMillis());
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It goes when the program ends.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
