package halfwidth.command;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.JobRefused;
import halfwidth.job.Line;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * The scratch folder of a demo station: whose it still is, and whether anybody entered something.
 */
final class DemoFolder {
    private static final String BEGINNING = "halfwidth-demo-";

    /** Holds how many lines of the journal are the season's. */
    private static final String SEASON = "season.txt";

    private DemoFolder() {}

    /** Makes one, and removes those that programs left which were killed. */
    static Path create(Path scratch) throws IOException {
        Path folder = Files.createTempDirectory(scratch, BEGINNING);
        sweepBeside(folder);
        return folder;
    }

    /** Notes that all there is until now is the season. */
    static void noteSeason(Job job) throws IOException {
        Files.writeString(job.folder().resolve(SEASON), job.lines().size() + "\n");
    }

    /** Whether nobody entered or adapted anything; false where it cannot be told. */
    static boolean isUntouched(Job job) {
        try {
            int season = Integer.parseInt(Files.readString(job.folder().resolve(SEASON)).strip());
            return Files.notExists(job.folder().resolve("pages"))
                    && job.lines().stream()
                            .skip(season)
                            .map(Line::fact)
                            .allMatch(
                                    fact -> fact instanceof Fact.Ran || fact instanceof Fact.Found);
        } catch (IOException | NumberFormatException e) {
            return false;
        }
    }

    /**
     * Removes what nobody entered anything in, of the same owner. The lock of a job tells whether
     * its program lives.
     */
    private static void sweepBeside(Path own) {
        try (DirectoryStream<Path> folders =
                Files.newDirectoryStream(own.getParent(), BEGINNING + "*")) {
            for (Path folder : folders) {
                if (!folder.equals(own)
                        && Files.isRegularFile(folder.resolve(SEASON), LinkOption.NOFOLLOW_LINKS)
                        && Files.getOwner(folder).equals(Files.getOwner(own))
                        && isLeft(folder)) {
                    Leftovers.remove(folder);
                }
            }
        } catch (IOException e) {
            // Another program was faster; the next one sees to the rest.
        }
    }

    private static boolean isLeft(Path folder) {
        try (Job job = Job.open(folder)) {
            return isUntouched(job);
        } catch (JobRefused | UncheckedIOException e) {
            return false; // held, or not to be read
        }
    }
}
