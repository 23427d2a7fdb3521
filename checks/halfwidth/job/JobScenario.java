package halfwidth.job;

import halfwidth.approval.Role;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A job's life on a disk that may fail: made, worked in for two sessions, and what was acknowledged
 * of it. What a line must say is known before it is written, and not read from the job.
 */
final class JobScenario {
    static final Map<String, String> HEADING = heading();
    static final String TORN = "10,0,2026-06-12T10:31:00Z,\"A. B";
    private static final Visit VISIT = new Visit("sweep/width", "pair 3");

    /** Whether lines that were to be written together must be there. */
    enum Told {
        KEPT,
        NOT_KEPT,
        UNKNOWN
    }

    /** Lines that hold together, each by what it says in short. */
    record Block(List<String> says, Told told) {}

    /** What was told up to some moment. */
    record State(boolean created, List<Block> blocks) {}

    private final List<Block> blocks = new ArrayList<>();
    private final List<String> traces = new ArrayList<>();
    private Optional<List<String>> underway = Optional.empty();
    private boolean created;
    private int lengths = 300;

    private static Map<String, String> heading() {
        Map<String, String> heading = new LinkedHashMap<>();
        heading.put("Station", "North Field, \"old\" site");
        heading.put("Runway", "09");
        return heading;
    }

    /** What was told so far; what is being written may be there or not. */
    State state() {
        List<Block> all = new ArrayList<>(blocks);
        underway.ifPresent(says -> all.add(new Block(says, Told.UNKNOWN)));
        return new State(created, all);
    }

    /** What reached the caller and was no refusal in words. */
    List<String> traces() {
        return traces;
    }

    /** A write that ended with the program which made it. */
    interface Tear {
        void of(Path journal) throws IOException;
    }

    /** Lives the life; a line is torn off between the sessions. */
    void run(Path folder, Tear tear) throws IOException {
        first(folder).ifPresent(job -> close(job, this::firstSession));
        Path journal = WatchedPath.below(folder.resolve("journal.csv"));
        // Whoever tears a line has written the lines before it.
        if (Files.exists(journal) && Files.size(journal) > JournalText.HEADER.length()) {
            tear.of(folder.resolve("journal.csv"));
        }
        opened(() -> shown(Job.open(folder))).ifPresent(job -> close(job, this::secondSession));
    }

    /** A fault while it is opened must not hide what is there. */
    private Job shown(Job job) {
        wrong(state(), job.lines(), false).ifPresent(is -> traces.add("shows else: " + is));
        return job;
    }

    private Optional<Job> first(Path folder) {
        Optional<Job> job = opened(() -> made(folder));
        if (job.isEmpty()) {
            job = opened(() -> Job.open(folder));
        }
        return job.isPresent() ? job : opened(() -> made(folder));
    }

    private Job made(Path folder) {
        Job job = Job.create(folder, HEADING);
        created = true;
        return job;
    }

    private void firstSession(Job job) {
        enter(job);
        note(job);
        block(job, 6);
        attempt(job, List.of("undo"), j -> j.undo(Optional.empty()));
        enter(job);
        attempt(
                job,
                List.of("ran met", "found width 4.50", "found spare 1"),
                j ->
                        j.publish(
                                j.entered(JobPages.WIDTH, "pair 3"),
                                "pair 3",
                                Outcome.of(Outcome.Word.MET),
                                List.of(
                                        new Finding("width", "4.5", "°", "", "met", "4.50"),
                                        new Finding("spare", "1", "", "", "", "1"))));
        Fact signed = new Fact.Signed(VISIT, "r.html", "abc", Role.PREPARED, "A. B", "");
        attempt(
                job,
                List.of("recorded r.html", "signed r.html", "despite a limit"),
                j ->
                        j.state(
                                time ->
                                        List.of(
                                                new Fact.Recorded(VISIT, "r.html", "abc", "2-ab"),
                                                signed,
                                                new Fact.Despite(
                                                        VISIT, "r.html", "A. B", "a limit", ""))));
    }

    private void secondSession(Job job) {
        block(job, 3);
        attempt(
                job,
                List.of("undo"),
                j -> {
                    List<Line> last = j.lastEntered(Optional.of(VISIT));
                    return last.isEmpty() ? last : j.undo(VISIT, last.get(0).number());
                });
        enter(job);
        note(job);
    }

    private void enter(Job job) {
        String typed = ++lengths + " m";
        List<Change> change = List.of(Change.to(Place.input("length"), typed));
        attempt(job, List.of("length " + typed), j -> j.enter(JobPages.WIDTH, "pair 3", change));
    }

    private void block(Job job, int rows) {
        List<Change> changes = new ArrayList<>();
        List<String> says = new ArrayList<>();
        for (int row = 1; row <= rows; row++) {
            String mark = "mark " + ++lengths;
            changes.add(Change.to(Place.cell("sweep", row, "mark"), mark));
            says.add("sweep " + mark);
        }
        attempt(job, says, j -> j.enter(JobPages.WIDTH, "pair 3", changes));
    }

    private void note(Job job) {
        String text = "note " + ++lengths;
        attempt(job, List.of(text), j -> j.state(new Fact.Noted(VISIT, text)));
    }

    private void attempt(Job job, List<String> says, Function<Job, List<Line>> step) {
        underway = Optional.of(says);
        try {
            if (!step.apply(job).isEmpty()) {
                blocks.add(new Block(says, Told.KEPT));
            }
        } catch (JobRefused refusal) {
            boolean isOut = refusal.getMessage().contains("NOT kept");
            boolean isOutAsWell = refusal.getMessage().contains("are not kept");
            boolean givenUp = refusal.getMessage().contains("given up");
            Told told = isOut || isOutAsWell || givenUp ? Told.NOT_KEPT : Told.UNKNOWN;
            blocks.add(new Block(says, told));
            hear(refusal);
        } catch (OutOfMemoryError passes) {
            blocks.add(new Block(says, Told.UNKNOWN));
        } catch (RuntimeException | Error trace) {
            blocks.add(new Block(says, Told.UNKNOWN));
            traces.add("while it wrote " + says + ": " + trace);
        }
        underway = Optional.empty();
    }

    private void hear(JobRefused refusal) {
        if (refusal.getMessage().length() < 20 || refusal instanceof JobHeld) {
            traces.add("no words, or held by nobody: " + refusal);
        }
    }

    private interface Opening {
        Job open();
    }

    private Optional<Job> opened(Opening opening) {
        try {
            return Optional.of(opening.open());
        } catch (JobRefused refusal) {
            hear(refusal);
        } catch (OutOfMemoryError passes) {
            // Allowed.
        } catch (RuntimeException | Error trace) {
            traces.add("while it opened: " + trace);
        }
        return Optional.empty();
    }

    private void close(Job job, java.util.function.Consumer<Job> session) {
        try {
            session.accept(job);
            job.close();
        } catch (JobRefused refusal) {
            hear(refusal);
        } catch (OutOfMemoryError passes) {
            // Allowed.
        } catch (RuntimeException trace) {
            traces.add("while it closed: " + trace);
        }
    }

    /**
     * What a job does not hold of what was told, or holds besides; empty if it is right.
     *
     * @param half whether a block that nobody acknowledged may be there in part, since it is said
     */
    static Optional<String> wrong(State told, List<Line> lines, boolean half) {
        List<List<String>> there = blocks(lines);
        int next = 0;
        for (Block block : told.blocks()) {
            boolean isThere = next < there.size() && there.get(next).equals(block.says());
            if (block.told() == Told.KEPT && !isThere) {
                return Optional.of("lost: " + block.says() + " of " + there);
            }
            if (block.told() == Told.NOT_KEPT && isThere) {
                return Optional.of("silent: refused and there: " + block.says());
            }
            next += isThere ? 1 : 0;
        }
        if (next < there.size() && !half) {
            return Optional.of("silent: never entered so: " + there.get(next) + " of " + there);
        }
        for (int i = 0; i < lines.size() && !half; i++) {
            if (lines.get(i).number() != i + 1) {
                return Optional.of("silent: line " + (i + 1) + " is " + lines.get(i));
            }
        }
        return Optional.empty();
    }

    private static List<List<String>> blocks(List<Line> lines) {
        List<List<String>> blocks = new ArrayList<>();
        List<String> block = new ArrayList<>();
        for (Line line : lines) {
            block.add(says(line.fact()));
            if (line.more() == 0) {
                blocks.add(block);
                block = new ArrayList<>();
            }
        }
        if (!block.isEmpty()) {
            blocks.add(block);
        }
        return blocks;
    }

    private static String says(Fact fact) {
        if (fact instanceof Fact.Value value) {
            return value.place().name() + " " + value.typed();
        } else if (fact instanceof Fact.Undo) {
            return "undo";
        } else if (fact instanceof Fact.Ran ran) {
            return "ran " + ran.outcome().words();
        } else if (fact instanceof Fact.Found found) {
            return "found " + found.finding().name() + " " + found.finding().shown();
        } else if (fact instanceof Fact.Recorded recorded) {
            return "recorded " + recorded.file();
        } else if (fact instanceof Fact.Signed signed) {
            return "signed " + signed.file();
        } else if (fact instanceof Fact.Despite despite) {
            return "despite " + despite.against();
        }
        return ((Fact.Noted) fact).text();
    }

    /** Whether what was torn off is still in the journal, or set aside. */
    static boolean hasTorn(Path folder) {
        Path below = WatchedPath.below(folder);
        try (Stream<Path> files = Files.list(below)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file, StandardCharsets.ISO_8859_1);
                if (file.getFileName().toString().startsWith("journal") && text.contains(TORN)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Whether a job has the heading that it was made with, or is none yet. */
    static boolean isWhole(Path folder) {
        return !Files.exists(folder.resolve("job.csv"))
                || Job.readOnly(folder).heading().equals(HEADING);
    }
}
