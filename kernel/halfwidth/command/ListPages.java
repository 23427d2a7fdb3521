package halfwidth.command;

import halfwidth.page.Page;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the pages in the order of the job. */
@Command(
        name = "list",
        description = "List the worked pages in the order of the job.",
        mixinStandardHelpOptions = true)
final class ListPages implements Callable<Integer> {
    @Mixin private Notebooks notebooks;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String stage = null;
        for (Page page : notebooks.pages().all()) {
            String folder = page.name().contains("/") ? page.name().split("/")[0] : "";
            if (!folder.equals(stage)) {
                out.println((stage == null ? "" : System.lineSeparator()) + folder);
                stage = folder;
            }
            out.printf("  %-28s %s%n", page.name(), page.title());
        }
        return CommandLineProgram.RAN;
    }
}
