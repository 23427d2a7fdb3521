package halfwidth.packaged;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Chromium for one errand, without a display, a network or anybody's profile. */
public final class Chromium {
    private Chromium() {}

    /**
     * The command that starts it.
     *
     * @param folder where it may keep a profile
     * @param errand what it is to do, as in {@code --dump-dom ADDRESS}
     */
    public static List<String> command(Path folder, String... errand) throws IOException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                "chromium",
                                "--headless",
                                "--no-sandbox",
                                "--disable-gpu",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--user-data-dir="
                                        + Files.createTempDirectory(folder, "chromium")));
        command.addAll(List.of(errand));
        return command;
    }
}
