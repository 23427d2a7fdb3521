package halfwidth.json;

import halfwidth.page.PageRefused;
import halfwidth.page.Problem;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What pages came to on their worked examples. */
public final class CheckJson {
    private final List<Map<String, Object>> pages = new ArrayList<>();
    private List<String> journal = List.of();

    /** Adds a page that ran. */
    public void ran(String page, Run run) {
        // A worked example is complete, so a step of it that waits is at fault as well.
        List<Run.Ran> idle =
                run.steps().stream()
                        .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                        .filter(ran -> !(ran.outcome() instanceof Outcome.Failed))
                        .toList();
        List<Map<String, Object>> faults =
                RunJson.faults(
                        run.steps(), Stream.concat(run.checks().stream(), idle.stream()).toList());
        add(page, run.steps().size(), run.checks().size(), List.of(), faults);
    }

    /** Adds a page that is none. */
    public void malformed(String page, PageRefused refusal) {
        add(page, 0, 0, refusal.problems().stream().map(Problem::toString).toList(), List.of());
    }

    private void add(
            String page,
            int steps,
            int checks,
            List<String> malformed,
            List<Map<String, Object>> faults) {
        pages.add(
                new Members()
                        .put("page", page)
                        .put("holds", malformed.isEmpty() && faults.isEmpty())
                        .put("steps", steps)
                        .put("checks", checks)
                        .put("malformed", malformed)
                        .put("faults", faults)
                        .all());
    }

    /** Adds what is wrong with the journal of the job that was looked through. */
    public void journal(List<String> warnings) {
        journal = List.copyOf(warnings);
    }

    /**
     * All pages that were added.
     *
     * @param records of the job, if there is one
     */
    public String text(int status, List<Map<String, Object>> records) {
        return JsonText.of(
                new Members()
                        .put("format", "halfwidth check 1")
                        .put("status", status)
                        .put("journal", journal)
                        .put("records", records)
                        .put("pages", pages)
                        .all());
    }
}
