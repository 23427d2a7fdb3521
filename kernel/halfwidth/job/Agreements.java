package halfwidth.job;

import halfwidth.page.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/**
 * Agreements that a job's page may run outside the bounds of page code. Each is a line of the job's
 * journal, for whoever reads the job; and it is noted with the user who agreed, outside of every
 * job, so that a job from elsewhere, or a copy in another folder, brings none along. It holds for
 * one text of one page in one folder.
 */
public final class Agreements {
    private Agreements() {}

    /**
     * Agrees to a page that says in its heading what it needs.
     *
     * @throws JobRefused if it says nothing of that, or the agreement cannot be noted
     */
    public static void agree(Job job, Page page, String by) {
        String needs =
                page.outsideBounds()
                        .orElseThrow(
                                () ->
                                        new JobRefused(
                                                page.name()
                                                        + " does not say in its heading that it"
                                                        + " leaves the bounds of page code."));
        Fact.Agreed agreed =
                new Fact.Agreed(new Visit(page.name(), ""), Fingerprint.of(page.text()), by, needs);
        try {
            Path file = ofThisUser();
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    mark(job, agreed) + "\n",
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new JobRefused("The agreement could not be kept: " + e);
        }
        job.state(agreed);
    }

    /** The agreement by which a page runs outside the bounds here and now; mostly none. */
    public static Optional<Line> of(Job job, Page page) {
        if (page.outsideBounds().isEmpty()) {
            return Optional.empty();
        }
        String digest = Fingerprint.of(page.text());
        return all(job, page.name()).stream()
                .filter(line -> ((Fact.Agreed) line.fact()).digest().equals(digest))
                .filter(line -> holdsHere(job, (Fact.Agreed) line.fact()))
                .reduce((first, last) -> last);
    }

    /** Every agreement to a page that a job knows of, wherever it was given. */
    public static List<Line> all(Job job, String page) {
        return job.lines().stream()
                .filter(line -> line.fact() instanceof Fact.Agreed)
                .filter(line -> line.fact().visit().page().equals(page))
                .toList();
    }

    /** An agreement in words. */
    public static String words(Line line) {
        Fact.Agreed agreed = (Fact.Agreed) line.fact();
        return "%s agreed on %s that it leaves the bounds of page code: %s"
                .formatted(agreed.by(), line.time().toLocalDate(), agreed.needs());
    }

    private static boolean holdsHere(Job job, Fact.Agreed agreed) {
        try {
            return Files.readAllLines(ofThisUser()).contains(mark(job, agreed));
        } catch (NoSuchFileException e) {
            return false;
        } catch (IOException e) {
            throw new JobRefused("The agreements cannot be read: " + e);
        }
    }

    private static String mark(Job job, Fact.Agreed agreed) throws IOException {
        String what =
                String.join(
                        "\n",
                        job.folder().toRealPath().toString(),
                        agreed.visit().page(),
                        agreed.digest());
        return Fingerprint.of(what.getBytes(StandardCharsets.UTF_8));
    }

    private static Path ofThisUser() {
        return Path.of(System.getProperty("user.home"), ".halfwidth", "agreed");
    }
}
