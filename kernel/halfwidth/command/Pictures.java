package halfwidth.command;

import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.PageLost;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.show.Sheet;
import java.util.List;

/** Draws the plots of a sheet that is to be written to a file. */
final class Pictures {
    /** The layout of a plot (px) and its dots for each px: sharp on paper and on a dense screen. */
    private static final int WIDTH = 720;

    private static final int HEIGHT = 450;
    private static final double SCALE = 2;

    private Pictures() {}

    static Sheet drawn(Sheet sheet, OpenPage page) {
        return sheet.with(drawn(sheet.run(), page));
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
