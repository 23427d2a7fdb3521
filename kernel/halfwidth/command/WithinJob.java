package halfwidth.command;

import halfwidth.adapt.AdaptedPages;
import halfwidth.job.Agreements;
import halfwidth.job.Fact;
import halfwidth.job.Filling;
import halfwidth.job.Job;
import halfwidth.job.JobHeld;
import halfwidth.job.JobRefused;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.record.Findings;
import halfwidth.run.OpenPage;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.OwnCopy;
import halfwidth.show.Sheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options of a run within a job: which one, which visit, as of when. */
final class WithinJob implements AutoCloseable {
    @Option(
            names = "--job",
            paramLabel = "DIR",
            description =
                    "Take the values entered so far from this job folder, and keep new ones there.")
    private Path folder;

    @Mixin private VisitName visit;

    @Option(
            names = "--at",
            paramLabel = "TIME|LINE",
            description =
                    "Show the job as it stood at a time such as 2026-06-12T10:00+02:00, or after"
                            + " that line of its journal; nothing is kept.")
    private String at;

    @Option(
            names = "--from",
            paramLabel = "INPUT=VISIT",
            description =
                    "Take an input from that visit of the page it comes from, where there are"
                            + " several.")
    private Map<String, String> from = new LinkedHashMap<>();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private Job job;

    /** Opens the job, if one is named; to read only if another process writes in it. */
    void open(PrintWriter err) {
        if (folder == null) {
            refuseWithoutJob();
            return;
        }
        try {
            job = at == null ? Job.open(folder) : earlier(Job.readOnly(folder));
        } catch (JobHeld held) {
            err.println(held.getMessage() + ". This run is shown and not kept.");
            job = Job.readOnly(folder);
        }
        JobFolder.warned(job, err);
    }

    /** Rather than run a worked example for somebody who asks for a visit. */
    private void refuseWithoutJob() {
        String asked =
                !visit.name().isEmpty()
                        ? "--visit"
                        : at != null ? "--at" : !from.isEmpty() ? "--from" : "";
        if (!asked.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), asked + " belongs to a job: name its folder, --job DIR.");
        }
    }

    private Job earlier(Job whole) {
        if (at.matches("\\d{1,15}")) {
            return whole.at(Long.parseLong(at));
        }
        try {
            return whole.at(OffsetDateTime.parse(at));
        } catch (DateTimeParseException e) {
            throw new Refused(
                    "--at " + at + " is neither a line nor a time such as 2026-06-12T10:00+02:00.");
        }
    }

    Optional<Job> job() {
        return Optional.ofNullable(job);
    }

    String visit() {
        return visit.name();
    }

    boolean keeps() {
        return job != null && job.isWritable();
    }

    Pages pages(Pages shipped) {
        return job == null ? shipped : job.pages(shipped);
    }

    /** The page with what was entered, after keeping what is entered now. */
    Filled filled(Page page, Entered entered, Pages pages, PrintWriter err) {
        if (job == null) {
            return entered.into(entered.isEmpty() ? Filled.example(page) : Filled.none(page));
        }
        if (!entered.saysNothing()) {
            job.keep(entered.into(job.entered(page, visit())), visit());
        }
        Visit of = new Visit(page.name(), visit());
        from.forEach((input, source) -> job.state(new Fact.Choice(of, input, source)));
        job.standing(of, pages);
        Filling filling = job.filled(page, visit());
        filling.remarks().forEach(remark -> err.println(remark + "."));
        return filling.filled();
    }

    Map<String, String> heading(Filled filled) {
        return job == null ? Map.of() : job.heading(filled, visit());
    }

    /** Opens a page; outside the bounds only where that was agreed to, here and for this job. */
    OpenPage opened(Page page, Workshop workshop, PrintWriter err) {
        if (agreement(page).isPresent()) {
            return workshop.openUnbounded(Script.of(page));
        }
        page.outsideBounds()
                .ifPresent(
                        why ->
                                err.printf(
                                        "%s asks to leave the bounds of page code, which nobody"
                                                + " agreed to here: %s%nIt runs within them. To agree,"
                                                + " read its steps, then: halfwidth agree %s --job DIR"
                                                + " --name NAME%n",
                                        page.name(), why, page.name()));
        return workshop.open(Script.of(page));
    }

    private Optional<Line> agreement(Page page) {
        return job().filter(own -> page.file().startsWith(own.folder()))
                .flatMap(own -> Agreements.of(own, page));
    }

    /** What is to be known of a page that is the job's own; the page is run for that. */
    Optional<OwnCopy> ownCopy(Page page, Pages shipped, OpenPage open) {
        return job().map(own -> new AdaptedPages(shipped.folder(), own.folder()))
                .filter(adapted -> adapted.adapted(page.name()))
                .map(adapted -> adapted.hasShipped(page.name()))
                .map(
                        has ->
                                OwnCopy.of(
                                        has,
                                        open.run(Values.of(Filled.example(page))),
                                        agreement(page).map(Agreements::words).orElse("")));
    }

    /**
     * Keeps what a run found, for other pages to take.
     *
     * @return whether that went well; if not, it is said why
     */
    boolean publish(Sheet sheet, PrintWriter err) {
        try {
            if (keeps()) {
                job.publish(sheet.filled(), visit(), Findings.outcome(sheet), Findings.of(sheet));
            }
            return true;
        } catch (JobRefused refusal) {
            err.println(refusal.getMessage() + ".");
            return false;
        }
    }

    @Override
    public void close() {
        job().ifPresent(Job::close);
    }
}
