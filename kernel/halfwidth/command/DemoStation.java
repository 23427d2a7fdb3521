package halfwidth.command;

import halfwidth.job.Job;
import halfwidth.job.Visit;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.record.Findings;
import halfwidth.run.OpenPage;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import halfwidth.value.Kind;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The invented station that comes with the program: what its crew entered, taken into a job in a
 * scratch folder.
 */
final class DemoStation {
    private static final String INPUTS = "inputs.csv";
    private static final CSVFormat LINES =
            CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .get();

    private final Path season;
    private final Pages pages;
    private final Job job;

    /** How many visits are computed; one thread does so and another tells. */
    private volatile int computed;

    private DemoStation(Path season, Pages pages, Job job) {
        this.season = season;
        this.pages = pages;
        this.job = job;
    }

    /**
     * Takes the station's season into a job of its own.
     *
     * @throws Refused if its files are not beside the pages, or no job can be made
     */
    static DemoStation beside(Pages pages) {
        Path season = pages.folder().resolveSibling("datasets").resolve("demo");
        if (!Files.isRegularFile(season.resolve("job.csv"))) {
            throw new Refused(
                    "The demo station is not in %s; carry datasets beside notebooks, or name a job with --job DIR."
                            .formatted(season.toAbsolutePath().normalize()));
        }
        try {
            Path scratch = Path.of(System.getProperty("java.io.tmpdir"));
            Leftovers.sweep(scratch, Instant.now());
            Path folder = DemoFolder.create(scratch);
            // Its heading says that it is invented, and heads every sheet.
            Files.copy(
                    season.resolve("job.csv"),
                    folder.resolve("job.csv"),
                    StandardCopyOption.REPLACE_EXISTING);
            DemoStation demo = new DemoStation(season, pages, Job.open(folder));
            pages.names().forEach(demo::take);
            DemoFolder.noteSeason(demo.job);
            return demo;
        } catch (IOException | UncheckedIOException e) {
            throw new Refused("The demo station cannot be opened: " + e.getMessage());
        }
    }

    Job job() {
        return job;
    }

    /** Removes the scratch folder of a job that is closed, unless somebody entered something. */
    void leave() {
        if (DemoFolder.isUntouched(job)) {
            try {
                Leftovers.remove(job.folder());
            } catch (IOException e) {
                // The next demo station removes it.
            }
        }
    }

    /** Every visit that the crew made of a page. */
    private void take(String name) {
        Page page = pages.find(name);
        for (String visit : visits(season.resolve(name))) {
            job.keep(filled(page, season.resolve(name).resolve(visit)), visit);
        }
    }

    private static Set<String> visits(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Set.of();
        }
        try (Stream<Path> files = Files.walk(folder, 2)) {
            return files.filter(file -> file.endsWith(INPUTS))
                    .map(file -> folder.relativize(file.getParent()).toString())
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Filled filled(Page page, Path folder) {
        Filled filled = Filled.none(page);
        try (Reader reader = Files.newBufferedReader(folder.resolve(INPUTS))) {
            for (CSVRecord line : LINES.parse(reader)) {
                filled = filled.with(line.get(0), typed(page, line.get(0), line.get(1)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (Part.Readings table : page.readings()) {
            Path file = folder.resolve(table.name() + ".csv");
            if (Files.isRegularFile(file)) {
                filled = filled.withReadings(table.name(), file);
            }
        }
        return filled;
    }

    /** As the crew typed it; but the array's file is found wherever the program was started. */
    private String typed(Page page, String name, String typed) {
        boolean array =
                page.fields().stream()
                        .filter(field -> field.name().equals(name))
                        .map(Field::kind)
                        .anyMatch(Kind.Array.class::isInstance);
        if (!array) {
            return typed; // perhaps no path on this system at all
        }
        Path file = season.resolve(Path.of(typed).getFileName());
        return Files.isRegularFile(file) ? file.toAbsolutePath().toString() : typed;
    }

    /** Runs every visit once, so that the list of pages tells how each stands. */
    void compute(Workshop workshop) {
        for (String name : pages.names()) {
            List<Visit> visits =
                    job.visits().stream().filter(visit -> visit.page().equals(name)).toList();
            Page page = pages.find(name);
            try (OpenPage open = workshop.open(Script.of(page))) {
                visits.forEach(visit -> compute(open, page, visit.name()));
            }
        }
    }

    /** How far that is. */
    String progress() {
        return "The demo station's visits are computed: %s of %s"
                .formatted(computed, job.visits().size());
    }

    private void compute(OpenPage open, Page page, String visit) {
        Filled filled = job.filled(page, visit).filled();
        Run run = open.run(Values.of(filled));
        Sheet sheet = new Sheet(filled, run, job.heading(), Stamp.now(Version.text(), page));
        job.publish(filled, visit, Findings.outcome(sheet), Findings.of(sheet));
        computed++;
    }
}
