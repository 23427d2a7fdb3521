package halfwidth.command;

import picocli.CommandLine.Option;

/** The option that keeps repeated visits of a page apart. */
final class VisitName {
    @Option(
            names = "--visit",
            paramLabel = "NAME",
            defaultValue = "",
            description =
                    "Which visit of the page, where it is filled in more than once in a job: each"
                            + " pair, each sweep, each year.")
    private String name;

    String name() {
        return name;
    }
}
