package halfwidth.page;

import java.nio.file.Path;

/**
 * One thing that is wrong with a page.
 *
 * @param line where, 1-based
 * @param message what is wrong, and after a semicolon what is expected
 */
public record Problem(Path file, int line, String message) {
    @Override
    public String toString() {
        return file + ":" + line + ": " + message;
    }
}
