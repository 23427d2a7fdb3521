package halfwidth.command;

import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** The option that asks for JSON in place of words for people. */
final class AsJson {
    @Option(
            names = "--json",
            description =
                    "Write JSON to standard output in place of words; the README lists its"
                            + " members.")
    private boolean json;

    boolean wanted() {
        return json;
    }

    /** Where words for people go: nowhere, if JSON is wanted. */
    PrintWriter words(PrintWriter out) {
        return json ? new PrintWriter(java.io.Writer.nullWriter()) : out;
    }
}
