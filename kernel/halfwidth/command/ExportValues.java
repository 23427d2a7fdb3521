package halfwidth.command;

import halfwidth.job.Export;
import halfwidth.job.JobFiles;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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

    @Option(names = "--force", description = "Write it over a file that is there already.")
    private boolean force;

    @Mixin private CsvReader csvFor;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        String csv = Export.of(folder.read(spec.commandLine().getErr()), csvFor.reader());
        if (out == null) {
            spec.commandLine().getOut().print(csv);
            return CommandLineProgram.RAN;
        }
        try {
            write(csv);
        } catch (FileAlreadyExistsException e) {
            throw new Refused(
                    out + " is there already; name another file, or write over it with --force.");
        } catch (IOException e) {
            throw new Refused(out + " cannot be written: " + e);
        }
        return CommandLineProgram.RAN;
    }

    private void write(String csv) throws IOException {
        if (JobFiles.isOne(out)) {
            throw new Refused(
                    out + " is a place for a job's own files; name a file outside of them.");
        }
        StandardOpenOption how = force ? StandardOpenOption.CREATE : StandardOpenOption.CREATE_NEW;
        Files.writeString(
                out, csv, how, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);
    }
}
