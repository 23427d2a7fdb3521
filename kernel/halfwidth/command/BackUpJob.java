package halfwidth.command;

import halfwidth.job.Backup;
import halfwidth.job.JobFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Packs a job's folder into one file. */
@Command(
        name = "backup",
        description = {
            "Pack a job's folder, as it is on disk now, into one zip file.",
            "It may be in use meanwhile. Unpack the file into an empty folder to go back to it, and"
                    + " look through that with check --job DIR."
        },
        mixinStandardHelpOptions = true)
final class BackUpJob implements Callable<Integer> {
    @Option(names = "--job", paramLabel = "DIR", required = true, description = "The job's folder.")
    private Path job;

    @Option(
            names = "--out",
            paramLabel = "FILE.zip",
            required = true,
            description = "Write it into this file, best on another disk.")
    private Path out;

    @Option(names = "--force", description = "Write it over a file that is there already.")
    private boolean force;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        try {
            if (JobFiles.isOne(out)) {
                throw new Refused(
                        out + " is a place for a job's own files; name a file outside of them.");
            }
            if (Files.exists(out) && !force) {
                throw new Refused(
                        out
                                + " is there already; name another file, or write over it with"
                                + " --force.");
            }
            Backup backup = Backup.of(job, out);
            spec.commandLine()
                    .getOut()
                    .printf(
                            "%s: %d lines of the journal, %d files%n",
                            out, backup.lines(), backup.files());
            return CommandLineProgram.RAN;
        } catch (IOException e) {
            throw new Refused(out + " cannot be written: " + e);
        }
    }
}
