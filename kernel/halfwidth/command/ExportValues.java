package halfwidth.command;

import halfwidth.job.Export;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes all values of a job as one CSV. */
@Command(
        name = "export",
        description = "Write all readings and inputs of a job as one CSV, a line for each value.",
        mixinStandardHelpOptions = true)
final class ExportValues implements Callable<Integer> {
    @Mixin private JobFolder folder;

    @Option(names = "--out", paramLabel = "FILE.csv", description = "Write it into this file.")
    private Path out;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        String csv = Export.of(folder.read(spec.commandLine().getErr()));
        if (out == null) {
            spec.commandLine().getOut().print(csv);
            return CommandLineProgram.RAN;
        }
        try {
            Files.writeString(out, csv);
        } catch (IOException e) {
            throw new Refused(out + " cannot be written: " + e);
        }
        return CommandLineProgram.RAN;
    }
}
