package halfwidth.command;

import halfwidth.job.JobRefused;
import halfwidth.json.VerifyJson;
import halfwidth.record.RecordRefused;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at records, does them again, and says whether all comes out as it was. */
@Command(
        name = "verify",
        description = {
            "Look at the seal of records, at the journal and the signatures of their job and at"
                    + " their pages; then do them again from what they hold themselves, and compare"
                    + " every result and all that they show.",
            "Nothing runs of one whose seal is broken, which its job's journal does not bear out,"
                    + " or whose page is not the shipped one.",
            "Exit status 0 if all is as it was written, signed and worked out, its page's checks"
                    + " hold and each signature counts for just this content; 1 if anything is not,"
                    + " if it could not be run, if the journal has a warning, or while what was sent"
                    + " back is not answered; 4 if nothing was found wrong but not all was compared."
        },
        mixinStandardHelpOptions = true)
final class VerifyRecords implements Callable<Integer> {
    @Parameters(paramLabel = "RECORD", arity = "1..*", description = "HTML files of records.")
    private List<Path> records;

    @ArgGroup private Running running = new Running();

    /** Whether the code of a record's page may run. */
    static final class Running {
        @Option(
                names = "--without-running",
                description = "Look at all else; nothing is worked out again.")
        private boolean never;

        @Option(
                names = "--run-its-code",
                description =
                        "Run the page whatever is wrong with the record, or if it is an adapted one;"
                                + " within the bounds of page code.")
        private boolean always;

        boolean never() {
            return never;
        }

        boolean always() {
            return always;
        }
    }

    @Mixin private AsJson json;
    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    private final VerifyJson found = new VerifyJson();

    /** Started when the first page is to run. */
    private Workshop workshop;

    @Override
    public Integer call() {
        try {
            int status =
                    records.stream()
                            .map(this::looked)
                            .reduce(RecordCheck.Result.HOLDS, RecordCheck.Result::worse)
                            .status();
            if (json.wanted()) {
                spec.commandLine().getOut().print(found.text(status));
            }
            return status;
        } finally {
            if (workshop != null) {
                workshop.close();
            }
        }
    }

    /** One that cannot be looked at keeps nobody from looking at the next. */
    private RecordCheck.Result looked(Path record) {
        found.begin(record.toString());
        RecordCheck.Result result = result(record);
        found.end(result == RecordCheck.Result.HOLDS);
        return result;
    }

    private RecordCheck.Result result(Path record) {
        try {
            return new RecordCheck(
                            notebooks.found(),
                            running,
                            this::workshop,
                            json.words(spec.commandLine().getOut()),
                            spec.commandLine().getErr(),
                            found)
                    .look(record);
        } catch (RecordRefused | JobRefused refusal) {
            spec.commandLine().getErr().println(record + ": " + refusal.getMessage());
            found.refused(refusal.getMessage());
            return RecordCheck.Result.FAILS;
        }
    }

    private Workshop workshop() {
        if (workshop == null) {
            workshop = Workshop.withoutSpare(allowance.budget());
        }
        return workshop;
    }
}
