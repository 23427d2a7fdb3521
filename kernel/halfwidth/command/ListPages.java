package halfwidth.command;

import halfwidth.job.Job;
import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the pages in the order of the job. */
@Command(
        name = "list",
        description = "List the worked pages in the order of the job.",
        mixinStandardHelpOptions = true)
final class ListPages implements Callable<Integer> {
    @Option(
            names = "--job",
            paramLabel = "DIR",
            description = "Tell how each page stands in this job, visit by visit.")
    private Path folder;

    @Mixin private Notebooks notebooks;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Optional<Job> job = Optional.ofNullable(folder).map(Job::readOnly);
        job.ifPresent(known -> JobFolder.warned(known, spec.commandLine().getErr()));
        Pages pages = job.map(j -> j.pages(notebooks.pages())).orElseGet(notebooks::pages);
        Map<Visit, Standing> standings = job.map(known -> known.standings(pages)).orElse(Map.of());
        String stage = null;
        for (Page page : pages.all()) {
            String in = page.name().contains("/") ? page.name().split("/")[0] : "";
            if (!in.equals(stage)) {
                out.println((stage == null ? "" : System.lineSeparator()) + in);
                stage = in;
            }
            out.printf("  %-28s %s%n", page.name(), page.title());
            standings.forEach((visit, standing) -> stands(page, visit, standing));
        }
        return CommandLineProgram.RAN;
    }

    private void stands(Page page, Visit visit, Standing standing) {
        if (visit.page().equals(page.name())) {
            String name = visit.name().isEmpty() ? "" : visit.name() + ": ";
            spec.commandLine().getOut().printf("    %s%s%n", name, standing.words());
            standing.because().forEach(why -> spec.commandLine().getOut().println("      " + why));
        }
    }
}
