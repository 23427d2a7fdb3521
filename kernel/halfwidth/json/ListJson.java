package halfwidth.json;

import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.page.PageRefused;
import halfwidth.page.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which pages there are, and how they stand in a job. */
public final class ListJson {
    private final List<Map<String, Object>> pages = new ArrayList<>();
    private Members page;
    private List<Map<String, Object>> visits;
    private List<Map<String, Object>> agreements;

    /** Begins a page; what is added after belongs to it. */
    public void page(String name, String title) {
        begin(name, title, List.of());
    }

    /** Begins a page that is none. */
    public void malformed(String name, PageRefused refusal) {
        begin(name, null, refusal.problems().stream().map(Problem::toString).toList());
    }

    private void begin(String name, String title, List<String> malformed) {
        visits = new ArrayList<>();
        agreements = new ArrayList<>();
        page =
                new Members()
                        .put("page", name)
                        .put("stage", name.contains("/") ? name.split("/")[0] : "")
                        .put("title", title)
                        .put("malformed", malformed)
                        .put("agreements", agreements)
                        .put("visits", visits);
        pages.add(page.all());
    }

    /** Adds who agreed that the page leaves the bounds of page code. */
    public void agreement(String words, boolean inForce) {
        agreements.add(new Members().put("said", words).put("in force", inForce).all());
    }

    /** Adds how a visit of the page stands. */
    public void visit(Visit visit, Standing standing, Optional<String> next) {
        visits.add(
                new Members()
                        .put("visit", visit.name())
                        .put("standing", standing.words())
                        .put("because", standing.because())
                        .put("next", next)
                        .put("approval", standing.approval().words())
                        .all());
    }

    /** All pages that were added. */
    public String text(int status) {
        return JsonText.of(
                new Members()
                        .put("format", "halfwidth list 1")
                        .put("status", status)
                        .put("pages", pages)
                        .all());
    }
}
