package halfwidth.command;

import halfwidth.job.Agreements;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.json.ListJson;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
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

    @Mixin private AsJson json;
    @Mixin private Notebooks notebooks;
    @Spec private CommandSpec spec;

    private final ListJson found = new ListJson();

    @Override
    public Integer call() {
        PrintWriter out = out();
        Optional<Job> job = Optional.ofNullable(folder).map(Job::readOnly);
        job.ifPresent(known -> JobFolder.warned(known, spec.commandLine().getErr()));
        Pages pages = job.map(j -> j.pages(notebooks.pages())).orElseGet(notebooks::pages);
        Map<Visit, Standing> standings = job.map(known -> known.standings(pages)).orElse(Map.of());
        String stage = null;
        int status = CommandLineProgram.RAN;
        for (String name : pages.names()) {
            String in = name.contains("/") ? name.split("/")[0] : "";
            if (!in.equals(stage)) {
                out.println((stage == null ? "" : System.lineSeparator()) + in);
                stage = in;
            }
            try {
                Page page = pages.find(name);
                out.printf("  %-28s %s%n", name, page.title());
                found.page(name, page.title());
                job.ifPresent(known -> agreements(known, page));
            } catch (PageRefused malformed) {
                out.printf("  %-28s %s%n", name, "malformed, see the problems below");
                found.malformed(name, malformed);
                spec.commandLine().getErr().println(malformed.getMessage());
                status = CommandLineProgram.FAILED;
            }
            standings.forEach((visit, standing) -> stands(job, name, visit, standing));
        }
        if (json.wanted()) {
            spec.commandLine().getOut().print(found.text(status));
        }
        return status;
    }

    private PrintWriter out() {
        return json.words(spec.commandLine().getOut());
    }

    private void agreements(Job job, Page page) {
        for (Line line : Agreements.all(job, page.name())) {
            boolean holds = Agreements.of(job, page).equals(Optional.of(line));
            found.agreement(Agreements.words(line), holds);
            out().printf(
                            "    %s%s%n",
                            Agreements.words(line),
                            holds ? "" : " (given elsewhere or for another text; not in force)");
        }
    }

    private void stands(Optional<Job> job, String page, Visit visit, Standing standing) {
        if (visit.page().equals(page)) {
            Optional<String> next = job.flatMap(known -> known.next(visit, standing));
            found.visit(visit, standing, next);
            PrintWriter out = out();
            String name = visit.name().isEmpty() ? "" : visit.name() + ": ";
            out.printf("    %s%s%n", name, standing.words());
            next.ifPresent(words -> out.println("      " + words));
            standing.because()
                    .forEach(why -> out.println("      " + why.replace("\n", "\n      ")));
            standing.approval().words().forEach(words -> out.println("      " + words));
        }
    }
}
