package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** Whatever people, tables and pages say, it is shown and never acted on. */
class EscapingTest {

    /** A sheet that says the same everywhere it can say something. */
    private static Sheet saying(String text) {
        Optional<String> none = Optional.empty();
        Field field =
                new Field(
                        1,
                        "f",
                        new Kind.Text(),
                        text,
                        "",
                        none,
                        none,
                        Optional.empty(),
                        Optional.empty(),
                        text,
                        Optional.empty());
        Column column = new Column(text, new Kind.Text(), text);
        Result result = new Result(1, "r", text, 1, none, none, text, none, text, text);
        Page page =
                new Page(
                        "p",
                        Path.of("p.md"),
                        text,
                        List.of(
                                new Part.Prose(1, text),
                                new Part.Inputs(2, List.of(field)),
                                new Part.Readings(3, text, List.of(column), List.of()),
                                new Part.Steps(4, "1\n2\n3\n4"),
                                new Part.Checks(8, text),
                                new Part.Results(9, List.of(result))));
        return new Sheet(
                new Filled(
                        page,
                        Map.of("f", new Entry(text, text, text)),
                        Map.of(text, DemoSheet.entered(List.of(List.of(text)))),
                        true),
                run(text),
                Map.of("Station", text, text, text),
                new Stamp(text, ZonedDateTime.parse("2026-03-04T09:15:30Z"), text, text));
    }

    private static Run run(String text) {
        Shown grid = new Shown.Grid(List.of(text), List.of(List.of(text)), 0, true);
        Shown picture = new Shown.Picture(text, text, text, new byte[] {1});
        return new Run(
                List.of(
                        ran(4, text, new Outcome.Done(new Shown.Words(text), text)),
                        ran(5, text, new Outcome.Done(grid, "")),
                        ran(6, text, new Outcome.Done(picture, "")),
                        ran(7, text, new Outcome.Failed(7, text, text, text))),
                List.of(ran(8, text, new Outcome.Failed(8, text, text, text))),
                Map.of("r", new Shown.Words(text)));
    }

    private static Ran ran(int line, String text, Outcome outcome) {
        return new Ran(new Step(0, line, text, text, text, text), outcome);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onmouseover='alert(1)",
                "</style></title><script>alert(1)</script>",
                "]]> --> & &amp; &#x3c;script&#x3e;"
            })
    void showsMarkupAsText(String text) {
        Document tree = HtmlSheetTest.tree(HtmlSheet.of(saying(text)));
        assertEquals(0, HtmlSheetTest.texts(tree, "//script").size());
        assertEquals(1, HtmlSheetTest.texts(tree, "//img").size());
        assertEquals(0, HtmlSheetTest.texts(tree, "//@onerror | //@onmouseover").size());
        assertEquals(List.of(text), HtmlSheetTest.texts(tree, "//h1"));
    }

    @Test
    void loadsNothingThatProsePointsTo() {
        String page =
                HtmlSheet.of(
                        saying(
                                "![a](https://example.org/a.png) [b](javascript:alert(1)) <i>c</i>"));
        Document tree = HtmlSheetTest.tree(page);
        assertEquals(0, HtmlSheetTest.texts(tree, "//img[starts-with(@src, 'http')]").size());
        assertEquals(0, HtmlSheetTest.texts(tree, "//a[contains(@href, 'javascript')]").size());
        assertEquals(0, HtmlSheetTest.texts(tree, "//i").size());
    }

    @Test
    void replacesControlCharactersThatHtmlForbids() {
        String page = HtmlSheet.of(saying("a\u0000b\u001b[31m"));
        assertFalse(page.indexOf(0) >= 0 || page.indexOf(27) >= 0);
        HtmlSheetTest.tree(page);
    }

    @Test
    void keepsControlCharactersFromTheTerminal() {
        String text = TextSheet.of(saying("a\u001b[31mb\rc"));
        assertTrue(text.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), text);
    }
}
