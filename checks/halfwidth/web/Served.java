package halfwidth.web;

import halfwidth.job.Job;
import halfwidth.job.Visit;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.run.Budget;
import halfwidth.run.Workshop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;

/** The notebook of a scratch job, served for checks. */
final class Served implements AutoCloseable {
    static final Path NOTEBOOKS = Path.of("notebooks").toAbsolutePath();

    private final Path folder;
    private Screen screen;

    private Served(Path folder) {
        this.folder = folder;
    }

    static Served scratch() {
        return scratch(job -> {});
    }

    /** The same, with values entered before. */
    static Served scratch(Consumer<Job> entering) {
        try {
            Path folder = Files.createTempDirectory("halfwidth-check-");
            try (Job job = Job.create(folder, Map.of("Station", "North Field", "Runway", "09"))) {
                entering.accept(job);
            }
            Served served = new Served(folder);
            served.start(0);
            return served;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Gives every page the values of its worked example, as if they had been entered. */
    static void enterExamples(Job job) {
        for (Page page : new Pages(NOTEBOOKS).all()) {
            Filled filled = Filled.none(page);
            for (Field field : page.fields()) {
                if (!field.example().isEmpty()) {
                    filled = filled.with(field.name(), field.example());
                }
            }
            for (Part.Readings table : page.readings()) {
                filled = filled.withReadings(table.name(), table.example());
            }
            job.keep(filled, "");
        }
    }

    /** Starts the program on the job, as a person does who runs it again. */
    void start(int port) {
        try {
            screen =
                    Screen.open(
                            Job.open(folder),
                            new Pages(NOTEBOOKS),
                            // A spare worker would only be one more to start for each check.
                            Workshop.withoutSpare(Budget.USUAL),
                            new Screen.Listening(port, "check"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void stop() {
        screen.close();
        screen = null;
    }

    Path folder() {
        return folder;
    }

    /** The job's journal; "" before anything is entered. */
    String journal() {
        Path journal = folder.resolve("journal.csv");
        try {
            return Files.exists(journal) ? Files.readString(journal) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int port() {
        return screen.port();
    }

    /** The path that all addresses are under. */
    String root() {
        return screen.root();
    }

    /** A new address with a key. */
    String key() {
        return screen.address();
    }

    /** Opens an address of the notebook in the browser, as somebody who has the key. */
    void open(String path) {
        Browser.driver().get(screen.address());
        Browser.driver().get("http://127.0.0.1:" + port() + root() + path);
    }

    /** Opens a sheet of its own to be filled in. */
    void fill(String page, String visit) {
        open(Address.of("/fill", new Visit(page, visit)));
        Browser.untilSettled();
    }

    @Override
    public void close() {
        if (screen != null) {
            stop();
        }
    }
}
