package halfwidth.web;

import halfwidth.adapt.AdaptedPages;
import halfwidth.approval.Approval;
import halfwidth.approval.Evidence;
import halfwidth.approval.PageDifference;
import halfwidth.job.Agreements;
import halfwidth.job.Change;
import halfwidth.job.Filling;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.JobRefused;
import halfwidth.job.Line;
import halfwidth.job.Outcome;
import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import halfwidth.record.Findings;
import halfwidth.record.SheetEvidence;
import halfwidth.run.OpenPage;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Step;
import halfwidth.run.Workshop;
import halfwidth.show.OwnCopy;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import halfwidth.show.Traced;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** The notebook of one job: its pages with what was entered, and a desk for each page at work. */
final class Notebook implements AutoCloseable {
    private static final Run NOTHING = new Run(List.of(), List.of(), Map.of());

    private final Job job;
    private final Pages shipped;
    private final Workshop workshop;
    private final String version;
    private final String root;
    private final Methods methods = new Methods();
    private final Desks desks;
    private final AdaptedPages adapted;
    private final Map<String, Page> sound = new ConcurrentHashMap<>();

    /**
     * @param root the path that all addresses of the session are under
     */
    Notebook(Job job, Pages shipped, Workshop workshop, String version, String root) {
        this.job = job;
        this.shipped = shipped;
        this.workshop = workshop;
        this.version = version;
        this.root = root;
        this.desks = new Desks(this::opened);
        this.adapted = new AdaptedPages(shipped.folder(), job.folder());
    }

    Job job() {
        return job;
    }

    /** The path that all addresses of the session are under. */
    String root() {
        return root;
    }

    /** The address of a view of a visit. */
    String at(String view, Visit visit) {
        return root + Address.of(view, visit);
    }

    /** What the job is called on the screen. */
    String name() {
        Map<String, String> heading = job.heading();
        String station = heading.getOrDefault("Station", job.folder().getFileName().toString());
        return heading.containsKey("Runway")
                ? station + ", runway " + heading.get("Runway")
                : station;
    }

    /** Tells this job from others in what a browser keeps, and nothing about where it is. */
    String key() {
        return Fingerprint.of(job.folder().toAbsolutePath().normalize().toString())
                .substring(0, 16);
    }

    Methods methods() {
        return methods;
    }

    /** The job's own copies of pages. */
    AdaptedPages adapted() {
        return adapted;
    }

    /** The pages of the job, adapted ones before shipped ones. */
    Pages pages() {
        return job.pages(shipped);
    }

    Pages shipped() {
        return shipped;
    }

    /**
     * A page as it is in its file now.
     *
     * @throws Refusal if there is none of that name
     * @throws PageRefused if it is malformed
     */
    Page page(String name) {
        checkName(name);
        return pages().find(name);
    }

    /**
     * Lets only names pass that are on the list of pages, so that a name never leads to another
     * file.
     *
     * @throws Refusal if it is none
     */
    void checkName(String name) {
        if (!pages().has(name)) {
            throw new Refusal(404, "There is no page " + name + ".");
        }
    }

    /** How much is to be computed before a scene is shown. */
    enum Effort {
        /** Nothing that takes time. */
        NONE,
        /** What was never computed with these values. */
        ONCE,
        /** Everything, since files that the page reads may be others by now. */
        ANEW,
        /** The same, with how each step came to its value, for whoever checks it. */
        WORKED
    }

    /** A visit as it is to be shown. */
    Scene scene(Visit visit, Effort effort, List<Trouble> troubles) {
        List<String> remarks = new ArrayList<>();
        Page page = soundPage(visit.page(), remarks);
        Filling filling = job.filled(page, visit.name());
        remarks.addAll(filling.remarks());
        Optional<Run> run = run(filling.filled(), effort);
        Approval approval = job.approval(visit, job.content(filling.filled(), visit.name()));
        Map<String, String> heading = job.heading(visit, approval);
        Sheet sheet = sheet(filling.filled(), run, heading);
        run.flatMap(ran -> publish(visit, sheet)).ifPresent(remarks::add);
        return new Scene(
                visit,
                sheet,
                run.isPresent(),
                job.values(visit),
                remarks,
                standing(visit),
                troubles,
                root,
                approval);
    }

    /** The worked example of a page, with its checks. */
    Scene example(Visit visit, Effort effort) {
        List<String> remarks = new ArrayList<>();
        Filled filled = Filled.example(soundPage(visit.page(), remarks));
        Optional<Run> run = run(filled, effort);
        Sheet sheet = sheet(filled, run, job.heading());
        return new Scene(
                visit,
                sheet,
                run.isPresent(),
                Map.of(),
                remarks,
                "worked example",
                List.of(),
                root,
                Approval.NONE);
    }

    /**
     * What a page comes to that is changed perhaps, with the values of a visit or those of its
     * worked example. Nothing is kept, and a changed page has a desk of its own.
     */
    Scene trial(Page changed, Visit visit, boolean example) {
        Filled filled =
                example ? Filled.example(changed) : job.filled(changed, visit.name()).filled();
        boolean same = changed.equals(page(changed.name()));
        Run run = desks.of(same ? changed.name() : trialDesk(changed.name())).run(filled);
        Sheet sheet = new Sheet(filled, run, job.heading(), Stamp.now(version, changed));
        return new Scene(
                visit, sheet, true, Map.of(), List.of(), "a trial", List.of(), root, Approval.NONE);
    }

    private static String trialDesk(String page) {
        return page + ", changed";
    }

    /** Opens a page; outside the bounds only where that was agreed to, here and for this job. */
    private OpenPage opened(Page page) {
        Script script = Script.of(page);
        return agreement(page).isPresent() ? workshop.openUnbounded(script) : workshop.open(script);
    }

    private Optional<Line> agreement(Page page) {
        return adapted.adapted(page.name()) ? Agreements.of(job, page) : Optional.empty();
    }

    private Sheet sheet(Filled filled, Optional<Run> run, Map<String, String> heading) {
        Page page = filled.page();
        Sheet sheet = new Sheet(filled, run.orElse(NOTHING), heading, Stamp.now(version, page));
        if (run.isEmpty() || !adapted.adapted(page.name())) {
            return sheet;
        }
        Run example = desks.of(page.name()).run(Filled.example(page));
        return sheet.ofOwnCopy(
                OwnCopy.of(
                        adapted.hasShipped(page.name()),
                        example,
                        agreement(page).map(Agreements::words).orElse("")));
    }

    /** What a scene shows to whoever signs it. */
    Evidence evidence(Scene scene) {
        Page page = scene.page();
        Run example = desks.of(page.name()).run(Filled.example(page));
        Optional<PageDifference> difference =
                AdaptedPages.difference(shipped.folder(), page.name(), page.text());
        return new SheetEvidence(scene.sheet(), example, job.reasons(scene.visit()))
                .evidence(job.isFilledIn(scene.visit()), difference);
    }

    /** The page, or as it was before if its file is malformed now. */
    private Page soundPage(String name, List<String> remarks) {
        try {
            Page page = page(name);
            sound.put(name, page);
            return page;
        } catch (PageRefused refusal) {
            Page before = sound.get(name);
            if (before == null) {
                throw refusal;
            }
            remarks.add(
                    "The page's file cannot be read as it is now; this is the page as it was"
                            + " before.\n"
                            + refusal.getMessage());
            return before;
        }
    }

    private Optional<Run> run(Filled filled, Effort effort) {
        Desk desk = desks.of(filled.page().name());
        return switch (effort) {
            case NONE -> desk.known(filled);
            case ONCE -> Optional.of(desk.run(filled));
            case ANEW -> Optional.of(desk.again(filled));
            case WORKED -> Optional.of(desk.worked(filled));
        };
    }

    /**
     * Keeps what a run found, for other pages to take.
     *
     * @return why it could not; the sheet can be shown all the same
     */
    private Optional<String> publish(Visit visit, Sheet sheet) {
        try {
            if (job.isWritable() && !job.values(visit).isEmpty()) {
                job.publish(
                        sheet.filled(), visit.name(), Findings.outcome(sheet), Findings.of(sheet));
            }
            return Optional.empty();
        } catch (JobRefused refusal) {
            return Optional.of(refusal.getMessage());
        }
    }

    private String standing(Visit visit) {
        return words(standingOf(visit), visit);
    }

    /** How a visit stands, with what it waits for as the sheet calls it. */
    String words(Standing standing, Visit visit) {
        boolean waiting =
                standing.ran()
                        .filter(ran -> ran.word() == Outcome.Word.WAITING)
                        .filter(ran -> ran.words().equals(standing.words()))
                        .isPresent();
        if (!waiting) {
            return standing.words();
        }
        Map<String, String> labels =
                page(visit.page()).fields().stream()
                        .collect(Collectors.toMap(Field::name, Field::label));
        return standing.ran().orElseThrow().names().stream()
                .map(name -> labels.getOrDefault(name, name))
                .collect(Collectors.joining(", ", "waiting for: ", ""));
    }

    private Standing standingOf(Visit visit) {
        try {
            return job.standing(visit, pages());
        } catch (PageRefused malformed) {
            return Standing.refused(malformed.getMessage());
        }
    }

    /** How all visits stand that were begun. One whose page cannot be read is refused. */
    Map<Visit, Standing> standings() {
        Map<Visit, Standing> standings = new LinkedHashMap<>();
        job.visits().forEach(visit -> standings.put(visit, standingOf(visit)));
        return standings;
    }

    /**
     * Enters what can be entered; it is on disk when this returns.
     *
     * @return why the rest was not
     */
    List<Trouble> enter(Visit visit, List<Change> changes) {
        return new Entering(job, page(visit.page()), visit.name()).enter(changes);
    }

    /**
     * What the values of a scene do to its steps and results.
     *
     * @param draws how often to draw the uncertain ones at random besides; 0 for not at all
     */
    Propagation propagated(Scene scene, int draws) {
        return desks.of(scene.page().name()).propagated(scene.sheet().filled(), draws);
    }

    /** A sheet with where its results come from. */
    Traced traced(Scene scene) {
        List<Step> steps = scene.sheet().run().steps().stream().map(Run.Ran::step).toList();
        return new Traced(scene.sheet(), propagated(scene, 0), methods.of(scene.page(), steps));
    }

    /** A picture of a plot. */
    byte[] draw(Filled filled, int step, Desk.Size size) {
        return desks.of(filled.page().name()).draw(filled, step, size);
    }

    /** What is going on at a page; empty if nothing is. */
    Optional<String> progress(String page) {
        return desks.of(page).progress().or(() -> desks.of(trialDesk(page)).progress());
    }

    void stop(String page) {
        desks.of(page).stop();
        desks.of(trialDesk(page)).stop();
    }

    @Override
    public void close() {
        desks.close();
        workshop.close();
        job.close();
    }
}
