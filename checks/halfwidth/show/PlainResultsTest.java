package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A page of which no result has a limit: long texts, numbers, one left out, one waited for. */
class PlainResultsTest {
    private static final String ADVICE =
            "Too much was cut from the other feed: cut the CSB feed by half an inch, phase again and"
                    + " enter the new offsets.";
    private static final Sheet SHEET = sheet();
    private static final String TEXT = TextSheet.of(SHEET);
    private static final org.w3c.dom.Document TREE = HtmlSheetTest.tree(HtmlSheet.of(SHEET));

    private static Sheet sheet() {
        List<Result> results =
                List.of(
                        result("advice", "", 0, "What to do"),
                        result("cut", "in", 4, "Cut now"),
                        result("offset", "°", 1, "Offset to expect on transmitter 1"),
                        result("other", "°", 1, "Offset to expect on transmitter 2"),
                        result("power", "dB", 1, "Change of power"));
        Part.Prose prose = new Part.Prose(1, "# Trim\n\n> **Caution.** Power off.\n\n> Stop here.");
        Page page =
                new Page(
                        "trim",
                        Path.of("trim.md"),
                        "Trim",
                        List.of(
                                prose,
                                new Part.Results(9, results),
                                new Part.Steps(20, "1\n2\n3\n4")));
        return new Sheet(
                new Filled(page, Map.of(), Map.of(), false),
                new Run(steps(), List.of(), finals()),
                Map.of(),
                new Stamp("1", ZonedDateTime.parse("2026-03-04T09:15:30Z"), "", "17"));
    }

    private static Result result(String name, String unit, int decimals, String label) {
        Optional<String> none = Optional.empty();
        return new Result(9, name, unit, decimals, none, none, "", none, label, "");
    }

    private static List<Ran> steps() {
        return List.of(
                ran(20, "slope", "°/in", new Outcome.Done(new Shown.Measured(4.19048, 0.0952), "")),
                ran(21, "other", "°", new Outcome.Done(new Shown.Nothing(), "")),
                ran(22, "", "", new Outcome.Done(new Shown.Nothing(), "")),
                ran(23, "power", "dB", new Outcome.Waiting(List.of("setting"))));
    }

    private static Ran ran(int line, String name, String unit, Outcome outcome) {
        return new Ran(new Step(line, line, "code", name, unit, ""), outcome);
    }

    private static Map<String, Shown> finals() {
        return Map.of(
                "advice", new Shown.Words(ADVICE),
                "cut", new Shown.Real(0.5),
                "offset", new Shown.Measured(-12.46, 0.24),
                "other", new Shown.Nothing());
    }

    @Test
    void haveNoColumnsForLimitsThatAreNotThere() {
        assertFalse(TEXT.contains("no limit"), TEXT);
        assertEquals(
                List.of("Result", "Value"),
                HtmlSheetTest.texts(TREE, "//section[@class='results']//thead//th"));
    }

    @Test
    void alignNumbersAndGiveALongTextTheRoomBeside() {
        assertEquals(
                """
                  What to do                         Too much was cut from the other feed: cut the CSB
                                                     feed by half an inch, phase again and enter the new
                                                     offsets.
                  Cut now                            0.5000  in
                  Offset to expect on transmitter 1   -12.5  °   ± 0.2
                  Offset to expect on transmitter 2    none
                  Change of power                         -
                      waiting for setting
                """,
                TEXT.substring(TEXT.indexOf("  What to do"), TEXT.indexOf("  ± is one")));
    }

    @Test
    void wrapALabelThatWouldLeaveATextNoRoom() {
        Columns columns = new Columns(60, "lr");
        columns.text("a label of many words that takes most of a line", "a text", List.of());
        assertTrue(columns.lines().get(0).endsWith("  a text"), columns.lines()::toString);
        assertEquals(3, columns.lines().size(), columns.lines()::toString);
    }

    @Test
    void sayWhyAValueIsNotThereWhereThereIsNoVerdict() {
        assertEquals(
                List.of("waiting for: setting"),
                HtmlSheetTest.texts(TREE, "//section[@class='results']//*[@class='why']"));
    }

    @Test
    void areGivenInStepsWithUncertaintyOrAsNone() {
        assertEquals(
                List.of("slope = (4.190 ± 0.095) °/in", "other = none"),
                HtmlSheetTest.texts(TREE, "//p[@class='value']"));
    }

    @Test
    void followCautionsThatDoNotRepeatTheirHeading() {
        assertTrue(TEXT.contains("CAUTION\n  ! Power off.\n  ! Stop here.\n"), TEXT);
        assertEquals(
                List.of("Power off.", "Stop here."),
                HtmlSheetTest.texts(TREE, "//section[@class='cautions']/p"));
    }

    @Test
    void leaveABlankForOtherProgramsAndSayWhy() {
        assertTrue(
                ResultsCsv.of(SHEET)
                        .contains("other,,°,,none,Offset to expect on transmitter 2,entered\r\n"));
    }
}
