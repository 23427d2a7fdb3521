package halfwidth.command;

import halfwidth.job.Job;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that names the job to be looked at or written in. */
final class JobFolder {
    @Option(names = "--job", paramLabel = "DIR", required = true, description = "The job's folder.")
    private Path folder;

    /** The job, to read; what is wrong with its journal is said. */
    Job read(PrintWriter err) {
        return warned(Job.readOnly(folder), err);
    }

    /** The job, to write in. */
    Job write(PrintWriter err) {
        return warned(Job.open(folder), err);
    }

    static Job warned(Job job, PrintWriter err) {
        job.warnings().forEach(warning -> err.println("Journal: " + warning + "."));
        job.notices().forEach(notice -> err.println(notice + "."));
        err.flush();
        return job;
    }
}
