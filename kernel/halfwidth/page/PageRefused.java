package halfwidth.page;

import java.util.List;
import java.util.stream.Collectors;

/** Says that a page is malformed, with everything that is wrong with it. */
public final class PageRefused extends RuntimeException {
    private final List<Problem> problems;

    PageRefused(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** What is wrong, in the order of the lines; at least one. */
    public List<Problem> problems() {
        return problems;
    }
}
