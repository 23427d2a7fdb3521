package halfwidth.job;

import halfwidth.approval.Approval;
import halfwidth.approval.Event;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A job folder: {@code job.csv} says which station it is, {@code journal.csv} holds all that was
 * entered, found and signed, in order; {@code pages} holds adapted pages and {@code records} the
 * records. A line of the journal is never changed, only followed by another: the values of a page
 * are what its lines come to. One process at a time writes; any number may read. Safe for use by
 * several threads.
 */
public final class Job implements AutoCloseable {
    static final String JOURNAL = "journal.csv";

    private final Path folder;
    private final Map<String, String> heading;
    private final List<String> warnings;
    private final List<Line> lines;
    private final Optional<Pen> pen;
    private final String tie;

    /** That job.csv says something else than when the journal was last written, if it does. */
    private Optional<String> otherHeading;

    private Moment now;

    private Job(
            Path folder,
            Map<String, String> heading,
            JournalText text,
            List<String> warnings,
            Optional<Pen> pen) {
        this.folder = folder;
        this.heading = heading;
        this.otherHeading = Heading.changed(folder, heading);
        this.warnings = List.copyOf(warnings);
        this.lines = new ArrayList<>(text.lines());
        this.pen = pen;
        this.tie = text.chain();
        this.now = Moment.after(lines);
    }

    /**
     * Makes a folder into a job's, and opens it.
     *
     * @param heading what heads every sheet, as in {@code Station → North Field}
     * @throws JobRefused if it is a job's already, or cannot be written
     */
    public static Job create(Path folder, Map<String, String> heading) {
        Heading.write(folder, heading);
        return open(folder);
    }

    /** {@linkplain #open(Path, String) Opens} a job in the name of the machine's user. */
    public static Job open(Path folder) {
        return open(folder, System.getProperty("user.name", ""));
    }

    /**
     * Opens a job to read and write, in the name of this person.
     *
     * @throws JobHeld if another process writes in it, saying who
     * @throws JobRefused if it is no job's folder, or cannot be read or written
     */
    public static Job open(Path folder, String who) {
        return open(folder, who, Clock.systemDefaultZone());
    }

    static Job open(Path folder, String who, Clock clock) {
        Map<String, String> heading = Heading.read(folder);
        WriterLock lock = WriterLock.take(folder.resolve("job.lock"), who);
        AutoCloseable open = lock;
        boolean opened = false;
        try {
            Path file = folder.resolve(JOURNAL);
            JournalText text = Journal.read(file);
            List<String> warnings = new ArrayList<>(text.warnings());
            Journal journal = Journal.open(file, text, Heading.digest(heading), warnings);
            Pen pen = new Pen(journal, lock, who, clock);
            open = pen;
            Job job = new Job(folder, heading, text, warnings, Optional.of(pen));
            opened = true;
            return job;
        } finally {
            if (!opened) {
                letGo(open);
            }
        }
    }

    /** What kept the job from being opened is what is told. */
    private static void letGo(AutoCloseable open) {
        try {
            open.close();
        } catch (Exception e) {
            // The files are closed in any case.
        }
    }

    /**
     * Opens a job to read only, as it stands now, whoever writes in it.
     *
     * @throws JobRefused if it is no job's folder, or cannot be read
     */
    public static Job readOnly(Path folder) {
        Map<String, String> heading = Heading.read(folder);
        JournalText text = Journal.read(folder.resolve(JOURNAL));
        return new Job(folder, heading, text, text.warnings(), Optional.empty());
    }

    public Path folder() {
        return folder;
    }

    /** What job.csv says, in its order. */
    public Map<String, String> heading() {
        return heading;
    }

    /** What heads a sheet of a visit: its name, job.csv, and who signed just what it shows. */
    public Map<String, String> heading(Filled filled, String visit) {
        Visit of = new Visit(filled.page().name(), visit);
        return heading(of, approval(of, content(filled, visit)));
    }

    /** What heads a sheet of a visit that was prepared, checked or sent back so. */
    public Map<String, String> heading(Visit visit, Approval approval) {
        Map<String, String> all = new LinkedHashMap<>();
        if (!visit.name().isEmpty()) {
            all.put("Visit", visit.name());
        }
        all.putAll(heading);
        all.putAll(approval.heading());
        return all;
    }

    /** What was said by name about a visit's sheet, in order. */
    public synchronized List<Event> events(Visit visit) {
        return state(visit).events();
    }

    /** Who prepared, checked or sent back a sheet that shows just this. */
    public Approval approval(Visit visit, String content) {
        return Approval.of(events(visit), content);
    }

    /** The fingerprint of what a visit's sheet shows: its page with the values, and its reasons. */
    public String content(Filled filled, String visit) {
        return Fingerprint.of(filled, reasons(new Visit(filled.page().name(), visit)));
    }

    /** The fingerprint of what a visit's sheet shows by this page with the values it has now. */
    public synchronized String content(Page page, String visit) {
        return content(filled(page, visit).filled(), visit);
    }

    /** Why there is no value, at each blank of a visit for which somebody said so. */
    public synchronized Map<Place, String> reasons(Visit visit) {
        return state(visit).reasons();
    }

    private VisitState state(Visit visit) {
        return now.of(visit).orElseGet(VisitState::new);
    }

    /** What is wrong with the journal: lines altered, removed or torn off. */
    public List<String> warnings() {
        return warnings;
    }

    /** What happened to the job since it was last written in, and need not be wrong. */
    public synchronized List<String> notices() {
        return otherHeading.stream().toList();
    }

    /** Whether it was opened to write. */
    public boolean isWritable() {
        return pen.isPresent();
    }

    /** The pages of this job: those adapted in its folder {@code pages} before the shipped ones. */
    public Pages pages(Pages shipped) {
        return shipped.under(folder.resolve("pages"));
    }

    /** Every line of the journal, in order. */
    public synchronized List<Line> lines() {
        return List.copyOf(lines);
    }

    /** The number of the last line; it grows with everything that is written. */
    public synchronized long last() {
        return lines.isEmpty() ? 0 : lines.get(lines.size() - 1).number();
    }

    /** The link that the journal's last line ends with, to be found again in it later. */
    public synchronized JournalLink link() {
        return new JournalLink(last(), pen.map(Pen::tie).orElse(tie));
    }

    /** The numbers of all lines that are undone. */
    public synchronized Set<Long> undone() {
        return Moment.undone(lines);
    }

    /** The job as it stood after a line of that number was written; to read only. */
    public synchronized Job at(long number) {
        return earlier(lines.stream().filter(line -> line.number() <= number).toList());
    }

    /**
     * The job as it stood when the clock last showed that time; to read only. Where the clock was
     * set back, the order of the lines counts and not their times.
     */
    public synchronized Job at(OffsetDateTime time) {
        int count = lines.size();
        while (count > 0 && lines.get(count - 1).time().isAfter(time)) {
            count--;
        }
        return earlier(lines.subList(0, count));
    }

    private Job earlier(List<Line> before) {
        JournalText text = new JournalText(before, warnings, 0, "", List.of());
        return new Job(folder, heading, text, warnings, Optional.empty());
    }

    /** Every visit that was begun, in the order in which they were. */
    public synchronized List<Visit> visits() {
        return now.visits();
    }

    /**
     * A page with the values of a visit of it.
     *
     * @param visit the visit's name, "" for that without
     */
    public synchronized Filling filled(Page page, String visit) {
        return new Filler(now, page, new Visit(page.name(), visit)).fill();
    }

    /** A page with what was typed for a visit, and its defaults, alone. */
    public synchronized Filled entered(Page page, String visit) {
        return new Filler(now, page, new Visit(page.name(), visit)).entered();
    }

    /** What stands at each place of a visit, with who entered it, when and why it is blank. */
    public synchronized Map<Place, Line> values(Visit visit) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(state(visit).values()));
    }

    /** Whether anything is filled in on a visit's sheet, be it why there is no value. */
    public synchronized boolean isFilledIn(Visit visit) {
        return state(visit).isFilledIn();
    }

    /** What the last run of a visit published, by name. */
    public synchronized Map<String, Finding> findings(Visit visit) {
        return Map.copyOf(state(visit).findings());
    }

    /**
     * How a visit stands.
     *
     * @param pages where its page and those it takes values from are
     * @throws JobRefused if its values come from itself, naming the ring
     */
    public synchronized Standing standing(Visit visit, Pages pages) {
        return new Standings(now, pages).of(visit);
    }

    /** What the sheet of a visit says is to be done next, unless it is out of date. */
    public synchronized Optional<String> next(Visit visit, Standing standing) {
        return standing.ran()
                .filter(ran -> ran.words().equals(standing.words()))
                .flatMap(current -> Finding.next(state(visit).findings().values()));
    }

    /** How all visits stand that were begun, in the order in which they were. */
    public synchronized Map<Visit, Standing> standings(Pages pages) {
        return new Standings(now, pages).all();
    }

    /**
     * Enters values, all or none; they are on disk when it returns.
     *
     * @param visit the visit's name, "" for that without
     * @return the lines written; none where nothing is changed
     * @throws halfwidth.value.EntryRefused if the page does not understand one of them
     * @throws ChangedMeanwhile if one of them is no longer what the person saw
     * @throws JobRefused if they cannot be kept
     */
    public synchronized List<Line> enter(Page page, String visit, List<Change> changes) {
        return write(changes(page, visit).facts(changes));
    }

    /** Those changes that {@link #enter} refuses as too far down a table, with what is wrong. */
    public synchronized Map<Place, String> tooFarDown(
            Page page, String visit, List<Change> changes) {
        return changes(page, visit).tooFarDown(changes);
    }

    /**
     * Enters what is typed on a page where it differs from what was {@linkplain #entered entered}.
     *
     * @return the lines written
     * @throws JobRefused if they cannot be kept
     */
    public synchronized List<Line> keep(Filled filled, String visit) {
        return write(changes(filled.page(), visit).facts(differences(filled, visit)));
    }

    /**
     * The same for somebody who sees what stands there, all or none.
     *
     * @param seen what the person saw, as typed; nothing at a place that is not in it
     * @throws ChangedMeanwhile if something that would be replaced is no longer what the person saw
     */
    public synchronized List<Line> keep(Filled filled, String visit, Map<Place, String> seen) {
        List<Change> all =
                differences(filled, visit).stream()
                        .map(change -> change.seeing(seen.getOrDefault(change.place(), "")))
                        .toList();
        return enter(filled.page(), visit, all);
    }

    private List<Change> differences(Filled filled, String visit) {
        Filled before = entered(filled.page(), visit);
        return changes(filled.page(), visit).differences(before, filled);
    }

    private Changes changes(Page page, String name) {
        Visit visit = new Visit(page.name(), name);
        return new Changes(page, visit, state(visit));
    }

    /**
     * Keeps what a run found, for other pages to take.
     *
     * @param filled what was run
     * @return the lines written; none if the last run was made from the same and found the same
     */
    public synchronized List<Line> publish(
            Filled filled, String visit, Outcome outcome, List<Finding> findings) {
        Visit of = new Visit(filled.page().name(), visit);
        Fact ran = new Fact.Ran(of, outcome, content(filled, visit));
        if (state(of).has(ran, findings)) {
            return List.of();
        }
        List<Fact> facts = new ArrayList<>(List.of(ran));
        findings.forEach(finding -> facts.add(new Fact.Found(of, finding)));
        return write(facts);
    }

    /**
     * Writes facts that are neither values nor the undoing of them, all or none: a note, a
     * signature, or which visit an input takes its value from.
     */
    public synchronized List<Line> state(Fact... facts) {
        List<Fact> all = List.of(facts);
        if (all.stream().anyMatch(f -> f instanceof Fact.Value || f instanceof Fact.Undo)) {
            throw new IllegalArgumentException("facts " + all + " must be entered or undone");
        }
        return write(all);
    }

    /** The same of facts that need the time that their lines will show. */
    public synchronized List<Line> state(Function<OffsetDateTime, List<Fact>> facts) {
        OffsetDateTime now = pen().now();
        return write(facts.apply(now), now);
    }

    /**
     * What was entered together last and is not yet taken back; none if there is nothing.
     *
     * @param visit on this visit; on any, if absent
     */
    public synchronized List<Line> lastEntered(Optional<Visit> visit) {
        return Undoing.last(lines, visit);
    }

    /**
     * Takes back what was entered last, if that is what somebody {@linkplain #lastEntered saw}.
     *
     * @param first the number of the first of its lines
     * @return what was taken back
     * @throws JobRefused if something else was entered meanwhile, or it is taken back already
     */
    public synchronized List<Line> undo(Visit visit, long first) {
        List<Line> last = lastEntered(Optional.of(visit));
        if (last.isEmpty() || last.get(0).number() != first) {
            throw new JobRefused(
                    "Something else was entered or taken back meanwhile; look at it first.");
        }
        return undo(Optional.of(visit));
    }

    /**
     * Takes back what was entered last and is not yet taken back, as a new line.
     *
     * @param visit of this visit; of any, if absent
     * @return what was taken back; none if there is nothing
     */
    public synchronized List<Line> undo(Optional<Visit> visit) {
        List<Line> last = Undoing.last(lines, visit);
        last.stream()
                .findFirst()
                .map(first -> new Fact.Undo(first.fact().visit(), first.number()))
                .ifPresent(undo -> write(List.of(undo)));
        return last;
    }

    private List<Line> write(List<Fact> facts) {
        if (facts.isEmpty()) {
            return List.of();
        }
        return write(facts, pen().now());
    }

    private Pen pen() {
        return pen.orElseThrow(
                () -> new JobRefused(folder + " is open to read only; nothing is kept"));
    }

    private List<Line> write(List<Fact> facts, OffsetDateTime at) {
        Pen writing = pen();
        if (otherHeading.isPresent()) {
            Fact noted = new Fact.Noted(new Visit("", ""), otherHeading.get());
            lines.addAll(writing.write(last(), at, List.of(noted)));
            otherHeading = Optional.empty();
        }
        List<Line> written = writing.write(last(), at, facts);
        lines.addAll(written);
        if (facts.stream().anyMatch(Fact.Undo.class::isInstance)) {
            now = Moment.after(lines);
        } else {
            written.forEach(now::add);
        }
        return written;
    }

    /** Lets others write. */
    @Override
    public void close() {
        pen.ifPresent(Pen::close);
    }
}
