package halfwidth.adapt;

import halfwidth.page.Pages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The texts of the shipped pages. */
final class ShippedText {
    static final Path NOTEBOOKS = Path.of("notebooks");
    static final List<String> NAMES = new Pages(NOTEBOOKS).names();

    private ShippedText() {}

    static String of(String name) {
        try {
            return Files.readString(NOTEBOOKS.resolve(name + ".md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Draft draft(String text) {
        return Draft.of("stage/name", Path.of("name.md"), text);
    }
}
