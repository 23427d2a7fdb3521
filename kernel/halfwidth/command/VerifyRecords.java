package halfwidth.command;

import halfwidth.approval.Approval;
import halfwidth.approval.Evidence;
import halfwidth.approval.Rule;
import halfwidth.job.Job;
import halfwidth.job.JobRefused;
import halfwidth.job.Visit;
import halfwidth.json.VerifyJson;
import halfwidth.record.OneLine;
import halfwidth.record.RecordRefused;
import halfwidth.record.Signatures;
import halfwidth.record.Verification;
import halfwidth.run.Workshop;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Does records again and says whether all comes out as it was. */
@Command(
        name = "verify",
        description = {
            "Do records again from what they hold themselves, and compare every result.",
            "Exit status 0 if every byte and every result is as it was written, and as the job's"
                    + " journal says where the record lies in one, the page's checks hold and each"
                    + " signature counts for just this content; else 1, also while what was sent"
                    + " back is not answered."
        },
        mixinStandardHelpOptions = true)
final class VerifyRecords implements Callable<Integer> {
    @Parameters(paramLabel = "RECORD", arity = "1..*", description = "HTML files of records.")
    private List<Path> records;

    @Mixin private AsJson json;
    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    private final VerifyJson found = new VerifyJson();

    @Override
    public Integer call() {
        boolean all = true;
        try (Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
            for (Path record : records) {
                found.begin(record.toString());
                boolean holds = looked(record, workshop);
                found.end(holds);
                all &= holds;
            }
        }
        int status = all ? CommandLineProgram.RAN : CommandLineProgram.FAILED;
        if (json.wanted()) {
            spec.commandLine().getOut().print(found.text(status));
        }
        return status;
    }

    /** One that cannot be looked at keeps nobody from looking at the next. */
    private boolean looked(Path record, Workshop workshop) {
        try {
            return holds(record, workshop);
        } catch (RecordRefused | JobRefused refusal) {
            spec.commandLine().getErr().println(record + ": " + refusal.getMessage());
            found.refused(refusal.getMessage());
            return false;
        }
    }

    private boolean holds(Path record, Workshop workshop) {
        PrintWriter out = json.words(spec.commandLine().getOut());
        say(out, record.toString());
        boolean holds;
        Optional<Evidence> shown = Optional.empty();
        Optional<Visit> visit = Optional.empty();
        try {
            Verification verified = Verification.of(record, workshop);
            say(
                    out,
                    "  %s, run %s with Halfwidth %s on Java %s"
                            .formatted(
                                    verified.about().get("page"),
                                    verified.about().get("ran"),
                                    verified.about().get("program"),
                                    verified.about().get("java")));
            String outside = verified.about().get("outside the bounds");
            if (outside != null) {
                say(out, "  ran OUTSIDE the bounds of page code, and is done again within them");
                say(out, "    " + outside);
            }
            say(out, verified.sealed() ? "  unchanged" : "  CHANGED after it was written");
            say(out, results(verified));
            verified.differences().forEach(difference -> say(out, "    " + difference));
            Evidence evidence = page(verified, out);
            holds = verified.holds() && evidence.checks().isEmpty();
            shown = Optional.of(evidence);
            visit = Optional.of(verified.visit());
        } catch (RecordRefused refusal) {
            spec.commandLine().getErr().println(refusal.getMessage());
            found.refused(refusal.getMessage());
            if (!Files.isReadable(record) || Signatures.job(record).isEmpty()) {
                return false;
            }
            holds = false;
        }
        boolean signatures = signatures(record, visit, shown, out);
        out.flush();
        return holds && signatures;
    }

    /** Prints which page it was made with, and what does not hold there. */
    private Evidence page(Verification verified, PrintWriter out) {
        PageText text = PageText.of(verified, notebooks.found());
        Evidence evidence = verified.evidence(text.difference());
        found.again(verified, evidence, text.words());
        say(out, "  made with " + text.words());
        int checks = verified.shows().example().checks().size();
        int failing = evidence.checks().size();
        String hold = checks == 0 ? "it has no checks" : "all " + checks + " checks hold";
        String found = failing == 0 ? hold : failing + " of " + checks + " checks FAIL";
        say(out, "  " + found + (checks == 0 ? "" : " on the worked example"));
        print("check at %s fails", evidence.checks(), out);
        print("step at %s fails", evidence.steps(), out);
        print("limit not met: %s", evidence.limits(), out);
        print("limit cannot be judged: %s", evidence.unjudged(), out);
        return evidence;
    }

    /** Says something on one line, whatever a record or a journal has put into it. */
    private static void say(PrintWriter out, String words) {
        out.println(OneLine.of(words));
    }

    private static void print(String words, List<String> which, PrintWriter out) {
        which.forEach(one -> say(out, "    " + words.formatted(one)));
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

    /** Prints who signed, and returns whether it is still what was written and signed. */
    private boolean signatures(
            Path record, Optional<Visit> visit, Optional<Evidence> shown, PrintWriter out) {
        Optional<Path> folder = Signatures.job(record);
        if (folder.isEmpty()) {
            say(out, "  not in a job folder, so that its signatures are not known here");
            return true;
        }
        Job job = JobFolder.warned(Job.readOnly(folder.get()), spec.commandLine().getErr());
        boolean asWritten = Signatures.isAsWritten(job, record);
        boolean known = Signatures.isKnown(job, record);
        if (!asWritten) {
            say(out, "  NOT what the journal says was written");
        }
        if (!known) {
            say(
                    out,
                    "  NOT in the journal of this job: it came from elsewhere, or the journal is an"
                            + " older one");
        }
        List<Signatures.Signature> signatures = Signatures.of(job, record);
        found.inJob(asWritten, known, signatures);
        for (Signatures.Signature is : signatures) {
            String remark = is.signed().remark().isEmpty() ? "" : ": " + is.signed().remark();
            say(
                    out,
                    "  signed here as %s by %s, %s%s%s"
                            .formatted(
                                    is.signed().role().words(),
                                    is.signed().by(),
                                    is.line().time(),
                                    remark,
                                    is.changed() ? " - CHANGED since it was signed" : ""));
        }
        boolean counts =
                visit.isEmpty()
                        || shown.isEmpty()
                        || counts(Signatures.standing(job, record, visit.get(), shown.get()), out);
        return asWritten
                && known
                && counts
                && signatures.stream().noneMatch(Signatures.Signature::changed);
    }

    /** Prints how the record stands, and returns whether what was signed counts. */
    private boolean counts(Rule rule, PrintWriter out) {
        found.counts(rule);
        Approval approval = rule.approval();
        approval.words().forEach(words -> say(out, "  " + words));
        approval.sentBack()
                .forEach(back -> say(out, "    not answered yet, journal line " + back.line()));
        if (approval.prepared().isEmpty() && approval.checked().isEmpty()) {
            say(out, "  neither prepared nor checked");
        }
        List<String> wrong = rule.doubts();
        wrong.forEach(why -> say(out, "    DOES NOT COUNT: " + why));
        return wrong.isEmpty() && approval.sentBack().isEmpty();
    }
}
