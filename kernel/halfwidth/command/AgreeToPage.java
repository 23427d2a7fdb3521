package halfwidth.command;

import halfwidth.job.Agreements;
import halfwidth.job.Job;
import halfwidth.page.Page;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a job's page run outside the bounds of page code. */
@Command(
        name = "agree",
        description = {
            "Agree that a job's page leaves the bounds of page code, as its heading asks.",
            "It may then do whatever you may do at this machine: read every step of it first. It"
                    + " holds for this text of the page, in this folder, for your account."
        },
        mixinStandardHelpOptions = true)
final class AgreeToPage implements Callable<Integer> {
    @Parameters(
            paramLabel = "PAGE",
            description = "The page's place under notebooks, as in transmit/feed-trim.")
    private String name;

    @Option(names = "--job", required = true, paramLabel = "DIR", description = "The job folder.")
    private Path folder;

    @Option(names = "--name", required = true, description = "Who agrees.")
    private String who;

    @Mixin private Notebooks notebooks;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        try (Job job = JobFolder.warned(Job.open(folder, who), spec.commandLine().getErr())) {
            Page page = Notebooks.page(job.pages(notebooks.pages()), name);
            if (!page.file().startsWith(folder)) {
                throw new Refused(name + " is not the job's own page; only such a page asks.");
            }
            Agreements.agree(job, page, who);
            spec.commandLine()
                    .getOut()
                    .printf(
                            "%s: %s%n",
                            name, Agreements.words(job.lines().get(job.lines().size() - 1)));
        }
        return CommandLineProgram.RAN;
    }
}
