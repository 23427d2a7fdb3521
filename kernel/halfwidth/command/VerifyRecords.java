package halfwidth.command;

import halfwidth.json.VerifyJson;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
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

    @ArgGroup private RunningOptions running = new RunningOptions();

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

    private RecordCheck.Result looked(Path record) {
        return new RecordCheck(
                        notebooks.found(),
                        running,
                        this::workshop,
                        json.words(spec.commandLine().getOut()),
                        spec.commandLine().getErr(),
                        found)
                .look(record);
    }

    private Workshop workshop() {
        if (workshop == null) {
            workshop = Workshop.withoutSpare(allowance.budget());
        }
        return workshop;
    }
}
