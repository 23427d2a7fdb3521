package halfwidth.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The season worked once for all checks, into a folder of its own. */
final class Demo {
    static final Path COMMITTED = Path.of("datasets", "demo");

    private static Path folder;
    private static Season season;

    private Demo() {}

    static synchronized Season season() {
        if (season == null) {
            try {
                folder = Files.createTempDirectory("season");
            } catch (IOException e) {
                throw new AssertionError(e);
            }
            season = Season.work(folder);
        }
        return season;
    }

    static Path folder() {
        season();
        return folder;
    }

    static Visit visit(String place) {
        Visit visit = season().desk().visit(place);
        if (visit == null) {
            throw new AssertionError("no visit " + place);
        }
        return visit;
    }

    /** The last of several visits whose places begin so. */
    static Visit last(String start) {
        return season().desk().visits().values().stream()
                .filter(visit -> visit.place().startsWith(start))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new AssertionError("no visit " + start));
    }
}
