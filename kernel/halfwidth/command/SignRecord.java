package halfwidth.command;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.record.Signatures;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Signs a record. */
@Command(
        name = "sign",
        description = {
            "Sign a record as who prepared or checked it.",
            "The signature is a line of the job's journal. It says who was named at this machine;"
                    + " it is not an electronic signature in law."
        },
        mixinStandardHelpOptions = true)
final class SignRecord implements Callable<Integer> {
    @Parameters(paramLabel = "RECORD", description = "The record's HTML file, in its job folder.")
    private Path record;

    @Option(names = "--name", required = true, description = "Who signs.")
    private String name;

    @Option(
            names = "--as",
            required = true,
            paramLabel = "ROLE",
            description = "One of: ${COMPLETION-CANDIDATES}.")
    private Fact.Role role;

    @Option(
            names = "--remark",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "What is to be remarked.")
    private String remark;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        Path folder =
                Signatures.job(record)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                record
                                                        + " is not in the folder records of a job;"
                                                        + " sign it there."));
        try (Job job = JobFolder.warned(Job.open(folder, name), spec.commandLine().getErr())) {
            Signatures.sign(job, record, role, name, remark);
            spec.commandLine().getOut().printf("Signed as %s by %s%n", role.words(), name);
        }
        return CommandLineProgram.RAN;
    }
}
