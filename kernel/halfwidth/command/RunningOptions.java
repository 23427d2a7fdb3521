package halfwidth.command;

import picocli.CommandLine.Option;

/** Whether the code of a record's page may run. */
final class RunningOptions {
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
