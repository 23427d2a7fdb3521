package halfwidth.command;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import halfwidth.json.VerifyJson;
import halfwidth.page.Pages;
import halfwidth.run.Workshop;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks through a job's folder: its heading and journal, every record in it, and which of those
 * that the journal names are gone.
 *
 * @param notebooks the shipped pages
 * @param found is told of each record, for programs
 */
record JobCheck(
        Job job,
        Notebooks notebooks,
        RunningOptions running,
        PrintWriter out,
        PrintWriter err,
        VerifyJson found) {

    /** The pages that the job uses, in the order of its work: those with entries, and its own. */
    List<String> pages(Pages all) {
        Set<String> used = job.visits().stream().map(Visit::page).collect(Collectors.toSet());
        Path own = job.folder().resolve("pages");
        return all.names().stream()
                .filter(name -> used.contains(name) || Files.exists(own.resolve(name + ".md")))
                .toList();
    }

    /** Says what the journal comes to, and returns how much of it is at fault. */
    int journal() {
        int faults = job.warnings().size();
        out.printf(
                "journal, %d lines, %s%n",
                job.lines().size(), faults == 0 ? "sound" : "NOT SOUND: see standard error");
        return faults;
    }

    /** Looks at the records, and returns how many are at fault or gone. */
    int records(Workshop workshop) {
        Set<String> there = there();
        Set<String> named =
                job.lines().stream()
                        .map(Line::fact)
                        .filter(Fact.Recorded.class::isInstance)
                        .map(fact -> ((Fact.Recorded) fact).file())
                        .filter(file -> file.endsWith(".html"))
                        .collect(Collectors.toCollection(TreeSet::new));
        named.removeAll(there);
        named.forEach(
                file ->
                        err.println(
                                "Record "
                                        + file
                                        + " is in the journal and not in the folder records; put it"
                                        + " back from a backup."));
        RecordCheck check =
                new RecordCheck(notebooks.found(), running, () -> workshop, out, err, found);
        long faults =
                there.stream()
                        .map(file -> check.look(job.folder().resolve("records").resolve(file)))
                        .filter(result -> result == RecordCheck.Result.FAILS)
                        .count();
        return named.size() + (int) faults;
    }

    private Set<String> there() {
        Path folder = job.folder().resolve("records");
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return Set.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".html"))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
