package halfwidth.command;

import halfwidth.job.Job;
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
                    + " journal says where the record lies in one, else 1."
        },
        mixinStandardHelpOptions = true)
final class VerifyRecords implements Callable<Integer> {
    @Parameters(paramLabel = "RECORD", arity = "1..*", description = "HTML files of records.")
    private List<Path> records;

    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        boolean all = true;
        try (Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
            for (Path record : records) {
                all &= holds(record, workshop);
            }
        }
        return all ? CommandLineProgram.RAN : CommandLineProgram.FAILED;
    }

    private boolean holds(Path record, Workshop workshop) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(record);
        boolean holds;
        try {
            Verification verified = Verification.of(record, workshop);
            out.printf(
                    "  %s, run %s with Halfwidth %s on Java %s%n",
                    verified.about().get("page"),
                    verified.about().get("ran"),
                    verified.about().get("program"),
                    verified.about().get("java"));
            out.println(verified.sealed() ? "  unchanged" : "  CHANGED after it was written");
            out.println(results(verified));
            verified.differences().forEach(difference -> out.println("    " + difference));
            holds = verified.holds();
        } catch (RecordRefused refusal) {
            spec.commandLine().getErr().println(refusal.getMessage());
            if (!Files.isReadable(record) || Signatures.job(record).isEmpty()) {
                return false;
            }
            holds = false;
        }
        boolean signatures = signatures(record, out);
        out.flush();
        return holds && signatures;
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
    private boolean signatures(Path record, PrintWriter out) {
        Optional<Path> folder = Signatures.job(record);
        if (folder.isEmpty()) {
            out.println("  not in a job folder, so that its signatures are not known here");
            return true;
        }
        Job job = JobFolder.warned(Job.readOnly(folder.get()), spec.commandLine().getErr());
        boolean asWritten = Signatures.isAsWritten(job, record);
        boolean known = Signatures.isKnown(job, record);
        if (!asWritten) {
            out.println("  NOT what the journal says was written");
        }
        if (!known) {
            out.println(
                    "  NOT in the journal of this job: it came from elsewhere, or the journal is an"
                            + " older one");
        }
        List<Signatures.Signature> signatures = Signatures.of(job, record);
        for (Signatures.Signature is : signatures) {
            String remark = is.signed().remark().isEmpty() ? "" : ": " + is.signed().remark();
            out.printf(
                    "  %s by %s, %s%s%s%n",
                    is.signed().role().words(),
                    is.signed().by(),
                    is.line().time(),
                    remark,
                    is.changed() ? " - CHANGED since it was signed" : "");
        }
        return asWritten && known && signatures.stream().noneMatch(Signatures.Signature::changed);
    }
}
