package halfwidth.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one page, so that all of it is told at once. */
final class Problems {
    private final Path file;
    private final List<Problem> found = new ArrayList<>();

    Problems(Path file) {
        this.file = file;
    }

    void add(int line, String message) {
        found.add(new Problem(file, line, message));
    }

    int count() {
        return found.size();
    }

    void refuseIfAny() {
        if (!found.isEmpty()) {
            found.sort(Comparator.comparingInt(Problem::line));
            throw new PageRefused(found);
        }
    }
}
