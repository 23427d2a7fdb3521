package halfwidth.command;

import halfwidth.run.OpenPage;
import halfwidth.show.HtmlSheet;
import halfwidth.show.ResultsCsv;
import halfwidth.show.Sheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The folder that {@code run --out} writes into. */
final class OutFolder {
    /** The layout of a plot (px) and its dots for each px: sharp on paper and on a dense screen. */
    private static final int WIDTH = 720;

    private static final int HEIGHT = 450;
    private static final double SCALE = 2;

    private final Path folder;

    OutFolder(Path folder) {
        this.folder = folder;
    }

    void write(Sheet sheet, OpenPage page) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("results.csv"), ResultsCsv.of(sheet));
            Sheet drawn = sheet.drawn(step -> page.draw(step, WIDTH, HEIGHT, SCALE));
            Files.writeString(folder.resolve("page.html"), HtmlSheet.of(drawn));
        } catch (IOException e) {
            throw new Refused("Folder " + folder + " cannot be written: " + e.getMessage());
        }
    }
}
