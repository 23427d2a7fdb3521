package halfwidth.show;

import halfwidth.method.MethodSource;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The pieces of a sheet, for a screen that puts them in another order than {@link HtmlSheet}.
 *
 * @param html where they are written to
 * @param pictures where plots are to be had
 */
public record SheetParts(Sheet sheet, Html html, Pictures pictures) {

    /** The title, the heading block, the notice of a worked example, and the cautions. */
    public void top() {
        new TopOfSheet(sheet, html).write();
    }

    /** The answers with their verdicts, and what stands in the way of the rest. */
    public void results() {
        new ResultsTable(sheet, html).write();
    }

    /**
     * Prose as it is written.
     *
     * @param intro whether it stands before all blocks, so that {@link #top} has its cautions
     */
    public void prose(Part.Prose part, boolean intro) {
        Prose prose = Prose.of(part.markdown());
        if (intro) {
            prose.takeCautions();
        }
        if (!prose.isEmpty()) {
            html.open("div", "class", "prose").line().trusted(prose.html()).close().line();
        }
    }

    /**
     * Every part of the page in its order, the prose among them; blocks as the caller writes them.
     */
    public void body(Consumer<Part> block) {
        boolean intro = true;
        for (Part part : sheet.page().parts()) {
            if (part instanceof Part.Prose prose) {
                prose(prose, intro);
            } else {
                intro = false;
                block.accept(part);
            }
        }
    }

    /** What was entered into fields. */
    public void inputs(Part.Inputs inputs) {
        new EntryTables(sheet, html).inputs(inputs);
    }

    /** What was entered into a table. */
    public void readings(Part.Readings readings) {
        new EntryTables(sheet, html).readings(readings);
    }

    /** Steps with their numbers and outcomes. */
    public void steps(Part.Steps steps) {
        StepList.plain(sheet, html, pictures).write(steps);
    }

    /**
     * Steps with their numbers and outcomes, and with the library methods that they call.
     *
     * @param called the methods that a step calls, whose source stands on the same page
     * @param uncertainty what is known of a step's uncertainty, in words; "" for nothing
     */
    public void steps(
            Part.Steps steps,
            Function<Step, List<MethodSource>> called,
            Function<Step, String> uncertainty) {
        new StepList(sheet, html, pictures, called, uncertainty).write(steps);
    }

    /** What came of one step, without its code. */
    public void outcome(Ran ran) {
        if (Plots.isPlot(ran)) {
            view(ran);
        } else {
            StepList.plain(sheet, html, pictures).outcome(ran.step(), ran.outcome());
        }
    }

    /** Checks with their sources. */
    public void checks(Part.Checks checks) {
        new CheckTable(sheet, html).write(checks);
    }

    /** The steps that gave a plot. */
    public List<Ran> plotted() {
        return sheet.run().steps().stream().filter(Plots::isPlot).toList();
    }

    /**
     * The steps that made a table, but for a mere row of numbers and for those that only sort or
     * select what was filled in.
     */
    public List<Ran> tabulated() {
        return sheet.run().steps().stream().filter(this::saysMoreThanReadings).toList();
    }

    private boolean saysMoreThanReadings(Ran ran) {
        return ran.outcome() instanceof Outcome.Done done
                && done.value() instanceof Shown.Grid grid
                && grid.made()
                && !Values.isSeries(grid)
                && sheet.page().readings().stream()
                        .map(table -> table.columns().stream().map(Column::name).toList())
                        .noneMatch(grid.columns()::equals);
    }

    /** A table in words: its name, its note, and how long it is. */
    public static String caption(Ran ran) {
        Shown.Grid grid = (Shown.Grid) ((Outcome.Done) ran.outcome()).value();
        String note = ran.step().note().isBlank() ? "" : ", " + ran.step().note();
        String rows = Counted.of(grid.rows().size() + grid.left(), "row");
        return "Table %s%s (%s)".formatted(ran.step().name(), note, rows);
    }

    /** The plot or table that a step gave. */
    public void view(Ran ran) {
        if (Plots.isPlot(ran)) {
            new Plots(sheet, html, pictures).figure(ran);
        } else if (ran.outcome() instanceof Outcome.Done done) {
            new ShownValue(html).write(ran.step(), done.value());
        }
    }

    /** All plots of the page, to which its steps point. */
    public void plots() {
        new Plots(sheet, html, pictures).write();
    }

    /** Where the results come from and how uncertain that makes them. */
    public void trace(Traced traced) {
        new TraceHtml(traced, html).write();
    }

    /** What an input accepts, in words; "" if anything. */
    public static String accepted(Field field) {
        return EntryTables.allowed(field);
    }
}
