package halfwidth.page;

import java.nio.file.Path;

/**
 * One thing that is wrong with a page.
 *
 * @param line where, 1-based; 0 if it is the file as a whole
 * @param message what is wrong, and after a semicolon what is expected
 */
public record Problem(Path file, int line, String message) {
    @Override
    public String toString() {
        return (line == 0 ? file : file + ":" + line) + ": " + message;
    }
}
