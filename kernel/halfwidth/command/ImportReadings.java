package halfwidth.command;

import halfwidth.job.Job;
import halfwidth.page.Filled;
import halfwidth.page.Import;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.spreadsheet.SpreadsheetFile;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes readings from a file into a job, after showing how. */
@Command(
        name = "import",
        description = {
            "Take readings from a CSV file or an xlsx workbook into a table of a page.",
            "Shows first which column goes where, in which unit and on which side it is positive,"
                    + " and takes nothing before that is accepted."
        },
        mixinStandardHelpOptions = true)
final class ImportReadings implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PAGE", description = "The page.")
    private String page;

    @Parameters(index = "1", paramLabel = "TABLE", description = "Its table of readings.")
    private String table;

    @Parameters(
            index = "2",
            paramLabel = "FILE",
            description =
                    "The file; of a workbook the first sheet, or the one named behind it: FILE.xlsx#SHEET.")
    private Path file;

    @Option(
            names = "--map",
            paramLabel = "HEADING=COLUMN",
            description =
                    "Which column of the table a heading of the file stands for, with what the"
                            + " heading does not say: --map \"ddm=near [µA, + in the 150]\"; with"
                            + " nothing behind = it is left out; \"reversed\" turns a sign.")
    private Map<String, String> stated = new LinkedHashMap<>();

    @Option(names = "--accept", description = "Take the readings as the mapping says.")
    private boolean accept;

    @Mixin private VisitName visit;
    @Mixin private JobFolder folder;
    @Mixin private Notebooks notebooks;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        try (Job job = folder.write(spec.commandLine().getErr())) {
            Page found = Notebooks.page(job.pages(notebooks.pages()), page);
            Filled before = job.entered(found, visit.name());
            Part.Readings into = table(found);
            SpreadsheetFile read = SpreadsheetFile.read(file);
            Import proposed = Import.propose(into, read, stated);
            show(read, proposed, before.readings().getOrDefault(table, List.of()).size());
            if (!proposed.isClear()) {
                proposed.questions().forEach(spec.commandLine().getErr()::println);
                proposed.problems().forEach(spec.commandLine().getErr()::println);
                throw new Refused("Nothing was taken.");
            }
            if (!isAccepted()) {
                throw new Refused("Nothing was taken: accept the mapping with --accept.");
            }
            job.keep(before.withReadings(table, proposed.rows()), visit.name());
            spec.commandLine().getOut().println("Taken: " + proposed.rows().size() + " rows.");
        }
        return CommandLineProgram.RAN;
    }

    private Part.Readings table(Page found) {
        List<String> names = found.readings().stream().map(Part.Readings::name).toList();
        return found.readings().stream()
                .filter(known -> known.name().equals(table))
                .findFirst()
                .orElseThrow(
                        () ->
                                new Refused(
                                        String.format(
                                                "Page %s has no table %s; it has %s.",
                                                page, table, String.join(", ", names))));
    }

    private void show(SpreadsheetFile read, Import proposed, int rowsBefore) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(file + " → " + page + ", " + table);
        read.remarks().forEach(remark -> out.println("  Taken: " + remark + "."));
        proposed.mapping().forEach(mapped -> out.println("  " + mapped.words()));
        proposed.absent().forEach(column -> out.println("  (not in the file) → " + column));
        if (rowsBefore > 0) {
            out.println("  The " + rowsBefore + " rows that are there now will be replaced.");
        }
        if (!proposed.rows().isEmpty()) {
            out.println("  First row: " + String.join(" | ", proposed.rows().get(0)));
        }
        out.flush();
    }

    private boolean isAccepted() {
        Console console = System.console();
        if (accept || console == null) {
            return accept;
        }
        String answer = console.readLine("Take these readings? (yes/no) ");
        return answer != null && answer.strip().equalsIgnoreCase("yes");
    }
}
