package halfwidth.command;

import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.PageLost;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.show.HtmlSheet;
import halfwidth.show.ResultsCsv;
import halfwidth.show.ReviewSheet;
import halfwidth.show.Sheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The folder that {@code run --out} writes into. */
final class OutFolder {
    /** The layout of a plot (px) and its dots for each px: sharp on paper and on a dense screen. */
    private static final int WIDTH = 720;

    private static final int HEIGHT = 450;
    private static final double SCALE = 2;

    private final Path folder;

    OutFolder(Path folder) {
        this.folder = folder;
    }

    void write(Sheet sheet, OpenPage page) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("results.csv"), ResultsCsv.of(sheet));
            Run drawn = drawn(sheet.run(), page);
            Files.writeString(folder.resolve("page.html"), HtmlSheet.of(sheet.with(drawn)));
            Files.writeString(folder.resolve("review.html"), ReviewSheet.of(sheet));
        } catch (IOException e) {
            throw new Refused("Folder " + folder + " cannot be written: " + e.getMessage());
        }
    }

    private static Run drawn(Run run, OpenPage page) {
        List<Run.Ran> steps = run.steps().stream().map(ran -> drawn(ran, page)).toList();
        return new Run(steps, run.checks(), run.finals(), run.worked());
    }

    private static Run.Ran drawn(Run.Ran ran, OpenPage page) {
        if (ran.outcome() instanceof Outcome.Done done
                && done.value() instanceof Shown.Picture picture) {
            Shown shown = new Shown.Picture(picture.title(), picture.description(), png(ran, page));
            return new Run.Ran(ran.step(), new Outcome.Done(shown, done.printed()));
        }
        return ran;
    }

    /** The picture; none where the page's worker had to be ended, so that the words stand alone. */
    private static byte[] png(Run.Ran ran, OpenPage page) {
        try {
            return page.draw(ran.step().index(), WIDTH, HEIGHT, SCALE);
        } catch (PageLost lost) {
            return new byte[0];
        }
    }
}
