package halfwidth.command;

import halfwidth.job.JobRefused;
import halfwidth.page.PageRefused;
import halfwidth.record.RecordRefused;
import halfwidth.run.PageLost;
import halfwidth.value.EntryRefused;
import java.io.PrintWriter;
import picocli.CommandLine;

/** Reads the command line, runs the command and returns the exit status. */
public final class CommandLineProgram {
    /** It ran. */
    static final int RAN = 0;

    /** An input or a step failed. */
    static final int FAILED = 1;

    /** It ran, but a limit is not met. */
    static final int LIMIT_NOT_MET = 3;

    /** Nothing was found wrong, but not all that should be looked at was. */
    static final int NOT_IN_FULL = 4;

    private CommandLineProgram() {}

    /**
     * Runs a command.
     *
     * @param out where its results go
     * @param err where its complaints go
     * @return 0 it ran, 1 an input or a step failed, 2 wrong usage, 3 a limit is not met, 4 nothing
     *     was found wrong in a record, but it was not verified in full
     */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        int status =
                new CommandLine(new Root())
                        .setCaseInsensitiveEnumValuesAllowed(true)
                        .setOut(out)
                        .setErr(err)
                        .registerConverter(Assignment.class, Assignment::of)
                        .registerConverter(ReadingsFile.class, ReadingsFile::of)
                        .setParameterExceptionHandler(
                                (wrong, typed) -> UsageError.explain(wrong, err))
                        .setExecutionExceptionHandler((e, line, parsed) -> explain(e, err))
                        .execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    private static int explain(Exception exception, PrintWriter err) throws Exception {
        boolean ours =
                exception instanceof Refused
                        || exception instanceof PageRefused
                        || exception instanceof EntryRefused
                        || exception instanceof JobRefused
                        || exception instanceof RecordRefused
                        || exception instanceof PageLost;
        if (!ours) {
            throw exception;
        }
        err.println(exception.getMessage());
        return FAILED;
    }
}
