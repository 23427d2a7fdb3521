package halfwidth.show;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.plot.Plot;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * A sheet made by hand with all that a sheet can have: invented values, pictures, missing readings,
 * a step that waits, one that failed, one held back by it, checks that hold and one that does not.
 */
final class DemoSheet {
    private static final Outcome FAILED =
            new Outcome.Failed(
                    58,
                    "the two readings at this point are equal, so no slope follows from them",
                    "IllegalArgumentException: azimuth 2.00 deg appears twice",
                    "Look at the rows of the table course with the same azimuth and correct one.");

    private DemoSheet() {}

    static Sheet of(boolean example) {
        Map<String, String> heading = new LinkedHashMap<>();
        heading.put("Station", "Demo (invented)");
        heading.put("Runway", "09");
        return new Sheet(
                new Filled(page(), entries(), readings(), example),
                new Run(steps(), example ? checks() : List.of(), finals()),
                heading,
                Stamp.of(
                        "0.1.0",
                        ZonedDateTime.parse("2026-03-04T09:15:30+01:00"),
                        "# Demo".getBytes(StandardCharsets.UTF_8)));
    }

    static Page page() {
        return new Page(
                "transmit/demo-trim",
                Path.of("notebooks/transmit/demo-trim.md"),
                "Trim of the sideband feed",
                List.of(
                        new Part.Prose(
                                1,
                                """
                                # Trim of the sideband feed

                                Finds *which* feed to cut, and by how much, so that both
                                transmitters end up as near to in phase as one cable allows.

                                > Take the localizer out of service, with the notice issued and
                                > the tower told, before the phasing is disturbed: it radiates
                                > misleading guidance meanwhile.

                                > RF off before a line is opened. A cut cannot be undone: measure
                                > twice, cut short.
                                """),
                        new Part.Inputs(20, fields()),
                        new Part.Readings(34, "course", courseColumns(), courseRows()),
                        new Part.Readings(40, "cuts", cutColumns(), cutRows()),
                        new Part.Prose(
                                44,
                                """
                                ## What the line does

                                The phase constant follows from the velocity factor,
                                β = 360 f / (c VF).

                                | Dielectric | Velocity factor |
                                |---|---:|
                                | foam | 0.84 |
                                | solid | 0.66 |
                                """),
                        new Part.Steps(50, "x\n".repeat(20)),
                        new Part.Prose(
                                71,
                                """
                                ## After the cut

                                > Check that the line is dry and the connector tight before RF is
                                > on again.

                                What each transmitter should read then.
                                """),
                        new Part.Steps(76, "x\n".repeat(20)),
                        new Part.Results(100, results()),
                        new Part.Checks(110, "x\n".repeat(4))));
    }

    private static Field number(int line, String name, String unit, String label) {
        return new Field(
                line,
                name,
                new Kind.Number(),
                unit,
                "1",
                Optional.empty(),
                Optional.empty(),
                Optional.of(0.0),
                Optional.of(360.0),
                label,
                Optional.empty());
    }

    private static List<Field> fields() {
        return List.of(
                new Field(
                        21,
                        "feed",
                        new Kind.Choice(List.of("CSB", "SBO")),
                        "",
                        "SBO",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        "Feed that carries the trimming section",
                        Optional.empty()),
                number(22, "frequency", "MHz", "Localizer frequency"),
                number(23, "velocityFactor", "1", "Velocity factor of the cable"),
                number(24, "offset1", "°", "SBO offset of transmitter 1"),
                number(25, "offset2", "°", "SBO offset of transmitter 2"),
                number(26, "phaseStep", "°", "Smallest step of the phase setting"),
                number(27, "firstPart", "1", "Part of the whole to cut first"),
                number(28, "tape", "mm", "Resolution of the tape"),
                new Field(
                        29,
                        "edge",
                        new Kind.Ddm(),
                        "1",
                        "155 in the 150",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        "Reading at the half-width point",
                        Optional.empty()),
                number(30, "power", "W", "Carrier power"));
    }

    private static Map<String, Entry> entries() {
        Map<String, Entry> entries = new LinkedHashMap<>();
        entries.put("feed", new Entry("SBO", "SBO", "SBO"));
        entries.put("frequency", new Entry("110.3", 110.3, "110.3 MHz"));
        entries.put("velocityFactor", new Entry(".84", 0.84, "0.84"));
        entries.put("offset1", new Entry("14.2", 14.2, "14.2°"));
        entries.put("offset2", new Entry("8.1 deg", 8.1, "8.1°"));
        entries.put("phaseStep", new Entry("0.5", 0.5, "0.5°"));
        entries.put("firstPart", new Entry("0.8", 0.8, "0.8"));
        entries.put("tape", new Entry("1/32 in", 0.79375, "0.79375 mm"));
        entries.put("edge", new Entry("155 in the 150", 0.155, "0.155 DDM (155 in the 150)"));
        return entries;
    }

    private static List<Column> courseColumns() {
        return List.of(
                new Column("mark", new Kind.Text(), ""),
                new Column("azimuth", new Kind.Number(), "°"),
                new Column("tx1", new Kind.Ddm(), "1"),
                new Column("tx2", new Kind.Ddm(), "1"));
    }

    private static List<List<String>> courseRows() {
        return List.of(
                List.of("A", "-3", "-0.232", "-0.229"),
                List.of("B", "-2", "-0.155", ""),
                List.of("C", "0", "0.001", "-0.002"),
                List.of("D", "2", "", "0.156"),
                List.of("E", "3", "0.233", "0.231"));
    }

    private static List<Column> cutColumns() {
        return List.of(
                new Column("total cut", new Kind.Number(), "mm"),
                new Column("offset", new Kind.Number(), "°"),
                new Column("day", new Kind.Date(), ""));
    }

    private static List<List<String>> cutRows() {
        return List.of(List.of("0", "11.2", "2026-03-04"), List.of("20", "7.9", ""));
    }

    private static Map<String, List<List<Optional<Entry>>>> readings() {
        return Map.of("course", entered(courseRows()), "cuts", entered(cutRows()));
    }

    static List<List<Optional<Entry>>> entered(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(DemoSheet::entered).toList()).toList();
    }

    private static Optional<Entry> entered(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(new Entry(typed, typed, typed));
    }

    private static Ran done(int line, String name, String unit, double value) {
        return done(line, name, unit, new Shown.Real(value));
    }

    private static Ran done(int line, String name, String unit, Shown value) {
        return ran(line, CODE.get(name), name, unit, new Outcome.Done(value, ""));
    }

    private static Ran ran(int line, String code, String name, String unit, Outcome outcome) {
        return new Ran(new Step(0, line, code, name, unit, NOTES.getOrDefault(name, "")), outcome);
    }

    private static final Map<String, String> CODE =
            Map.ofEntries(
                    Map.entry("c", "double c = Line.SPEED_OF_LIGHT;"),
                    Map.entry(
                            "beta",
                            "double beta = 360 * frequency * 1e6 / (c * velocityFactor) / 1000;"),
                    Map.entry("aim", "double aim = (offset1 + offset2) / 2;"),
                    Map.entry("spread", "double spread = Math.abs(offset1 - offset2) / 2;"),
                    Map.entry("whole", "double whole = aim / beta;"),
                    Map.entry("firstCut", "double firstCut = firstPart * whole;"),
                    Map.entry(
                            "u", "double u = Math.hypot(phaseStep / beta, tape) / Math.sqrt(12);"),
                    Map.entry("which", "String which = aim < 0 ? \"CSB\" : feed;"),
                    Map.entry(
                            "summary",
                            "Table summary = course.summary(\n    \"azimuth\", \"tx1\", \"tx2\");"),
                    Map.entry("left1", "double left1 = offset1 - beta * firstCut;"),
                    Map.entry("left2", "double left2 = offset2 - beta * firstCut;"));

    private static final Map<String, String> NOTES =
            Map.of("beta", "phase constant, β = 360 f / (c VF)", "aim", "middle of the two");

    private static List<Ran> steps() {
        List<Ran> steps = new ArrayList<>();
        steps.add(done(50, "c", "m/s", 299_792_458));
        steps.add(done(51, "beta", "°/mm", 0.157682));
        steps.add(done(52, "aim", "°", 11.15));
        steps.add(done(53, "spread", "°", 3.05));
        steps.add(done(54, "whole", "mm", 70.7119));
        steps.add(
                ran(
                        55,
                        "System.out.println(\"aim \" + aim + \" <deg>\");",
                        "",
                        "",
                        new Outcome.Done(new Shown.Nothing(), "aim 11.15 <deg>\n")));
        steps.add(picture(56, offsets()));
        steps.add(ran(58, "double slope = slope(course);", "slope", "1/°", FAILED));
        steps.add(
                ran(
                        60,
                        "double width = 0.310 / slope;",
                        "width",
                        "°",
                        new Outcome.Held(List.of(58))));
        steps.add(done(61, "summary", "", grid()));
        steps.add(picture(65, sweep()));
        steps.add(done(76, "firstCut", "mm", 56.5695));
        steps.add(done(77, "u", "mm", 0.943));
        steps.add(done(78, "which", "", new Shown.Words("SBO")));
        steps.add(done(79, "left1", "°", 5.28));
        steps.add(done(80, "left2", "°", -0.82));
        steps.add(picture(82, afterwards()));
        steps.add(
                ran(
                        86,
                        "double step = 10 * Math.log10(power / 15.0);",
                        "step",
                        "dB",
                        new Outcome.Waiting(List.of("power"))));
        return steps;
    }

    private static Shown grid() {
        return new Shown.Grid(
                List.of("column", "readings", "mean"),
                List.of(
                        List.of("azimuth", 5.0, 0.0),
                        List.of("tx1", 4.0, -0.03825),
                        Arrays.asList("tx2", 4.0, null)),
                2,
                true);
    }

    private static Ran picture(int line, Plot plot) {
        return ran(
                line,
                "Plot.of(\"%s\")…".formatted(plot.title()),
                "",
                "",
                new Outcome.Done(
                        new Shown.Picture(
                                plot.title(), plot.description(), plot.digest(), plot.png()),
                        ""));
    }

    private static Plot offsets() {
        double[] cuts = {0, 20, 40};
        return Plot.of("Offset against total cut")
                .across("Total cut", "mm")
                .up("SBO offset", "°")
                .points("Transmitter 1", cuts, new double[] {14.2, 11.1, Double.NaN})
                .points("Transmitter 2", cuts, new double[] {8.1, 4.8, 1.9})
                .line("Expected 1", new double[] {0, 80}, new double[] {14.2, 1.6})
                .line("Expected 2", new double[] {0, 80}, new double[] {8.1, -4.5})
                .level("Aim", 0);
    }

    private static Plot sweep() {
        double[] azimuths = DoubleStream.iterate(-35, a -> a + 2.5).limit(29).toArray();
        double[] ddm = DoubleStream.of(azimuths).map(a -> 0.3 * Math.tanh(a / 3)).toArray();
        ddm[5] = Double.NaN;
        return Plot.of("Sweep")
                .across("Azimuth", "°")
                .up("DDM", "1")
                .points("Transmitter 1", azimuths, ddm)
                .atLeast("least clearance", 10, 35, 0.15)
                .atMost("least clearance", -35, -10, -0.15);
    }

    private static Plot afterwards() {
        double[] xs = {0, 1, 2, 3};
        return Plot.of("Predicted offset")
                .across("Cut", "1")
                .up("Offset", "°")
                .line("Fit", xs, new double[] {14, 9, 5, 2})
                .band("± 2 u", xs, new double[] {13, 8, 3, -1}, new double[] {15, 10, 7, 5});
    }

    private static List<Result> results() {
        return List.of(
                new Result(
                        101,
                        "which",
                        "",
                        2,
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        "Feed to cut",
                        ""),
                new Result(
                        102,
                        "firstCut",
                        "mm",
                        1,
                        Optional.of("2"),
                        Optional.of("57.5"),
                        "approved handbook, longest trim",
                        Optional.of("u"),
                        "First cut",
                        ""),
                new Result(
                        103,
                        "left1",
                        "°",
                        1,
                        Optional.of("-5"),
                        Optional.of("5"),
                        "common practice, no source",
                        Optional.empty(),
                        "Offset left on transmitter 1 after the first cut",
                        "Left after the cut"),
                new Result(
                        104,
                        "left2",
                        "°",
                        1,
                        Optional.of("-5"),
                        Optional.of("5"),
                        "common practice, no source",
                        Optional.empty(),
                        "Offset left on transmitter 2 after the first cut",
                        "Left after the cut"),
                other("width", "°", Optional.of("6"), "Course width"),
                other("step", "dB", Optional.empty(), "Change of power"));
    }

    private static Result other(String name, String unit, Optional<String> most, String label) {
        return new Result(
                101, name, unit, 2, Optional.empty(), most, "", Optional.empty(), label, "Other");
    }

    private static Map<String, Shown> finals() {
        return Map.of(
                "which", new Shown.Words("SBO"),
                "firstCut", new Shown.Real(56.5695),
                "u", new Shown.Real(0.943),
                "left1", new Shown.Real(5.28),
                "left2", new Shown.Real(-0.82));
    }

    private static List<Ran> checks() {
        return List.of(
                check(110, "near(beta, 0.157682, 1e-6)", new Shown.Flag(true)),
                check(111, "near(aim, 11.15, 1e-9)", new Shown.Flag(true)),
                new Ran(
                        new Step(0, 112, "near(whole, 70.5, 0.1)", "", "", "by hand"),
                        new Outcome.Failed(112, "expected 70.5 within 0.1, got 70.7119", "", "")));
    }

    private static Ran check(int line, String code, Shown value) {
        return new Ran(
                new Step(0, line, code, "", "", "computed by hand"), new Outcome.Done(value, ""));
    }
}
