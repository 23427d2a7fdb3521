package halfwidth.command;

import halfwidth.approval.Approval;
import halfwidth.approval.Evidence;
import halfwidth.approval.Rule;
import halfwidth.job.JobRefused;
import halfwidth.json.VerifyJson;
import halfwidth.record.OneLine;
import halfwidth.record.ReadRecord;
import halfwidth.record.RecordRefused;
import halfwidth.record.ShownSheet;
import halfwidth.record.Verification;
import halfwidth.run.Workshop;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Looks at one record and says what it finds. All that can be compared is compared first; only then
 * does the page in it run, if nothing speaks against that.
 *
 * @param notebooks the folder of the shipped pages, if it was found
 * @param workshop where the page runs
 * @param found is told the same for programs
 */
record RecordCheck(
        Optional<Path> notebooks,
        RunningOptions running,
        Supplier<Workshop> workshop,
        PrintWriter out,
        PrintWriter err,
        VerifyJson found) {

    /** What came of it. */
    enum Result {
        HOLDS(CommandLineProgram.RAN),
        NOT_IN_FULL(CommandLineProgram.NOT_IN_FULL),
        FAILS(CommandLineProgram.FAILED);

        private final int status;

        Result(int status) {
            this.status = status;
        }

        int status() {
            return status;
        }

        Result worse(Result other) {
            return compareTo(other) < 0 ? other : this;
        }

        static Result of(boolean holds) {
            return holds ? HOLDS : FAILS;
        }
    }

    /** Looks at a record; one that cannot be looked at keeps nobody from looking at the next. */
    Result look(Path file) {
        found.begin(file.toString());
        Result result;
        try {
            result = looked(file);
        } catch (RecordRefused | JobRefused refusal) {
            err.println(file + ": " + refusal.getMessage());
            found.refused(refusal.getMessage());
            result = Result.FAILS;
        }
        out.flush();
        found.end(result == Result.HOLDS);
        return result;
    }

    private Result looked(Path file) {
        say(file.toString());
        ReadRecord record;
        try {
            record = ReadRecord.of(file);
        } catch (RecordRefused refusal) {
            err.println(refusal.getMessage());
            found.refused(refusal.getMessage());
            if (Files.isReadable(file)) {
                JournalCheck.of(file, err).ifPresent(this::say);
            }
            return Result.FAILS;
        }
        head(record);
        Optional<JournalCheck> job = JournalCheck.of(file, err);
        job.ifPresentOrElse(
                in -> {
                    say(in);
                    record.journalLink().ifPresent(link -> in.say(link, out));
                },
                () -> say("  not in a job folder, so that its signatures are not known here"));
        PageText text = PageText.of(record, notebooks);
        say("  made with " + text.words());
        text.lines().forEach(line -> say("    " + line));
        Result before =
                Result.of(
                        record.sealed()
                                && job.stream()
                                        .allMatch(
                                                in -> in.holds() && in.has(record.journalLink())));
        return before.worse(run(record, job, text));
    }

    private void say(JournalCheck job) {
        job.say(out);
        found.inJob(job.asWritten(), job.known(), job.signatures());
    }

    private void head(ReadRecord record) {
        say(
                "  %s, run %s with Halfwidth %s on Java %s"
                        .formatted(
                                record.about().get("page"),
                                record.about().get("ran"),
                                record.about().get("program"),
                                record.about().get("java")));
        String outside = record.about().get("outside the bounds");
        if (outside != null) {
            say("  ran OUTSIDE the bounds of page code, and is done again within them");
            say("    " + outside);
        }
        say(record.sealed() ? "  unchanged" : "  CHANGED after it was written");
    }

    private Result run(ReadRecord record, Optional<JournalCheck> job, PageText text) {
        List<String> against = against(record, job, text);
        if (running.never() || !against.isEmpty() && !running.always()) {
            found.notRun(running.never() ? List.of("as asked") : against);
            say(
                    running.never()
                            ? "  not run, as you asked: its results, and the sheet it shows, were"
                                    + " NOT worked out again"
                            : "  NOT RUN: its results, and the sheet it shows, were not worked out"
                                    + " again, since "
                                    + String.join(", and ", against));
            if (!running.never()) {
                say(
                        "    read its page first; --run-its-code runs it within the bounds of page code");
            }
            job.ifPresent(in -> in.standing(record).forEach(this::say));
            boolean answered = job.stream().allMatch(in -> in.isAnswered(record));
            return running.never() && against.isEmpty() && answered
                    ? Result.NOT_IN_FULL
                    : Result.FAILS;
        }
        try {
            return compared(Verification.of(record, workshop.get()), job, text);
        } catch (RecordRefused refusal) {
            err.println(refusal.getMessage());
            found.refused(refusal.getMessage());
            return Result.FAILS;
        }
    }

    /** What speaks against running the page. */
    private static List<String> against(
            ReadRecord record, Optional<JournalCheck> job, PageText text) {
        List<String> against = new ArrayList<>();
        if (!record.sealed()) {
            against.add("its seal is broken");
        }
        job.ifPresent(in -> against.addAll(in.against()));
        if (!text.shipped()) {
            against.add("its page is not the one that this version ships");
        }
        return against;
    }

    private Result compared(Verification again, Optional<JournalCheck> job, PageText text) {
        say(results(again));
        again.differences().forEach(difference -> say("    " + difference));
        say(shown(again.shown().how()));
        again.shown().words().forEach(words -> say("    " + words));
        Evidence evidence = again.evidence(text.difference());
        checks(again, evidence);
        found.again(again, evidence, text.words());
        boolean counts =
                job.stream().map(in -> in.rule(again.record(), evidence)).allMatch(this::counts);
        if (!again.holds() || !evidence.checks().isEmpty() || !counts) {
            return Result.FAILS;
        }
        return again.shown().how() == ShownSheet.How.SAME ? Result.HOLDS : Result.NOT_IN_FULL;
    }

    private static String results(Verification verified) {
        if (!verified.differences().isEmpty()) {
            return "  " + verified.differences().size() + " different:";
        }
        return "  all "
                + verified.results()
                + " results equal, "
                + (verified.exact() ? "to the last digit" : "to 9 digits");
    }

    private static String shown(ShownSheet.How how) {
        return switch (how) {
            case SAME -> "  the sheet it shows is what it comes to, letter by letter";
            case DIFFERENT -> "  the sheet it SHOWS IS NOT what it comes to:";
            case PLOTS_LEFT_OUT -> "  the sheet it shows is what it comes to, but for its plots:";
            case NOT_COMPARED -> "  the sheet it shows was NOT compared:";
        };
    }

    private void checks(Verification again, Evidence evidence) {
        int checks = again.shows().example().checks().size();
        int failing = evidence.checks().size();
        String hold = checks == 0 ? "it has no checks" : "all " + checks + " checks hold";
        String found = failing == 0 ? hold : failing + " of " + checks + " checks FAIL";
        say("  " + found + (checks == 0 ? "" : " on the worked example"));
        each("check at %s fails", evidence.checks());
        each("step at %s fails", evidence.steps());
        each("limit not met: %s", evidence.limits());
        each("limit cannot be judged: %s", evidence.unjudged());
    }

    /** Says how the record stands, and returns whether what was signed counts. */
    private boolean counts(Rule rule) {
        found.counts(rule);
        Approval approval = rule.approval();
        JournalCheck.words(approval).forEach(this::say);
        List<String> wrong = rule.doubts();
        wrong.forEach(why -> say("    DOES NOT COUNT: " + why));
        return wrong.isEmpty() && approval.sentBack().isEmpty();
    }

    private void each(String words, List<String> which) {
        which.forEach(one -> say("    " + words.formatted(one)));
    }

    /** Says something on one line, whatever a record or a journal has put into it. */
    private void say(String words) {
        out.println(OneLine.of(words));
    }
}
