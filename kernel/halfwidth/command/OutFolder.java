package halfwidth.command;

import halfwidth.show.HtmlSheet;
import halfwidth.show.ResultsCsv;
import halfwidth.show.ReviewSheet;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import halfwidth.spreadsheet.CsvFor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The folder that {@code run --out} writes into. */
final class OutFolder {
    private final Path folder;

    OutFolder(Path folder) {
        this.folder = folder;
    }

    void write(Traced traced, CsvFor reader) {
        Sheet sheet = traced.sheet();
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("results.csv"), ResultsCsv.of(traced, reader));
            Files.writeString(folder.resolve("page.html"), HtmlSheet.of(sheet));
            Files.writeString(folder.resolve("review.html"), ReviewSheet.of(traced));
        } catch (IOException e) {
            throw new Refused("Folder " + folder + " cannot be written: " + e.getMessage());
        }
    }
}
