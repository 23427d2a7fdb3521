package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Problem;
import halfwidth.run.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DraftTest {
    private static final String TEXT =
            """
            # Title

            Prose of
            two lines.

            ```csv inputs
            name,unit,kind,example,label
            length,m,number,2,Length
            ```

            ```java
            // The whole,
            // from end to end.
            double twice = 2 * length; // m: there and back
            double[] parts = {
                1,
                2
            };
            ```

            ```csv results
            name,unit,decimals,label
            twice,m,1,There and back
            ```

            ```java check
            twice == 4 // by hand
            ```
            """;

    private static final Step TWICE =
            new Step(
                    1,
                    14,
                    "// The whole,\n// from end to end.\ndouble twice = 2 * length;",
                    "twice",
                    "m",
                    "there and back");
    private static final Step PARTS =
            new Step(2, 15, "double[] parts = {\n    1,\n    2\n};", "parts", "", "");

    private final Draft draft = ShippedText.draft(TEXT);

    static List<String> names() {
        return ShippedText.NAMES;
    }

    private <T extends Part> T part(Class<T> kind) {
        return draft.page().orElseThrow().parts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStepIsPlacedWithItsComments() {
        assertEquals(new Place(12, 14, true), draft.place(TWICE));
        assertEquals(new Place(15, 18, true), draft.place(PARTS));
        assertTrue(draft.text().at(draft.place(TWICE)).endsWith("// m: there and back"));
    }

    @Test
    void aStepThatIsNoLongerThereIsRefused() {
        Draft moved = draft.insertAfter(draft.place(TWICE), "double one = 1;");
        assertThrows(IllegalArgumentException.class, () -> moved.place(PARTS));
    }

    @Test
    void blocksArePlacedBetweenTheirFences() {
        assertEquals(new Place(7, 8, true), draft.place(part(Part.Inputs.class)));
        assertEquals(new Place(12, 18, true), draft.place(part(Part.Steps.class)));
        assertEquals(new Place(22, 23, true), draft.place(part(Part.Results.class)));
        assertEquals(new Place(27, 27, true), draft.place(part(Part.Checks.class)));
        assertEquals(new Place(3, 4, false), draft.place(part(Part.Prose.class)));
    }

    @Test
    void aReplacedStepIsReadAgain() {
        Draft edited = draft.replace(draft.place(TWICE), "double twice = length + length; // m");
        Page page = edited.page().orElseThrow();
        Part.Steps steps = (Part.Steps) page.parts().get(2);
        assertTrue(steps.code().startsWith("double twice = length + length; // m\ndouble[] parts"));
        assertEquals(24, page.parts().get(4).line() - 1, "the fence of the checks, two lines up");
    }

    @Test
    void aRowIsAddedToTheInputs() {
        Draft edited = draft.addInput("width,m,number,3,Width");
        assertEquals("width", edited.page().orElseThrow().fields().get(1).name());
        assertEquals(9, edited.page().orElseThrow().fields().get(1).line());
    }

    @Test
    void aRowThatIsWrongIsToldAtItsLineAndKept() {
        Draft edited = draft.addInput("width,furlongs per fortnight,number,3,Width");
        assertTrue(edited.page().isEmpty());
        assertEquals(List.of(9), edited.problems().stream().map(Problem::line).toList());
        assertTrue(edited.text().toString().contains("furlongs per fortnight"));
        Draft mended = edited.replace(new Place(9, 9, true), "width,m,number,3,Width");
        assertTrue(mended.page().isPresent());
    }

    @Test
    void aCheckJoinsTheChecks() {
        Draft edited = draft.addCheck("twice > 0 // a length");
        assertEquals(
                "twice == 4 // by hand\ntwice > 0 // a length\n",
                ((Part.Checks) edited.page().orElseThrow().parts().get(4)).code());
    }

    @Test
    void theFirstCheckOfAPageGetsABlock() {
        Draft without = draft.remove(new Place(25, 28, false));
        Draft edited = without.addCheck("twice > 0 // a length");
        Part.Checks checks = (Part.Checks) edited.page().orElseThrow().parts().get(4);
        assertEquals("twice > 0 // a length\n", checks.code());
        assertTrue(edited.text().toString().endsWith("```\n"));
    }

    @Test
    void aLineThatWouldEndTheBlockIsRefusedAtItsLine() {
        Draft edited = draft.replace(draft.place(PARTS), "double[] parts = {};\n``` \nint z = 1;");
        assertTrue(edited.page().isEmpty());
        assertEquals(16, edited.problems().get(0).line());
        assertTrue(edited.text().toString().contains("int z = 1;"), "nothing typed is lost");
        Draft inserted = draft.insertAfter(draft.place(PARTS), "~~~~");
        assertEquals(19, inserted.problems().get(0).line());
    }

    @Test
    void proseMayGetABlockOfItsOwn() {
        Draft edited =
                draft.replace(
                        draft.place(part(Part.Prose.class)),
                        "Prose.\n\n```java\nint one = 1;\n```");
        assertEquals(6, edited.page().orElseThrow().parts().size());
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyBlockOfEveryShippedPageIsReplacedByItself(String name) {
        String shipped = ShippedText.of(name);
        for (String text : List.of(shipped, shipped.replace("\n", "\r\n"))) {
            Draft page = ShippedText.draft(text);
            for (Part part : page.page().orElseThrow().parts()) {
                Place place = page.place(part);
                Draft same = page.replace(place, page.text().at(place));
                assertEquals(text, same.text().toString());
                assertFalse(same.page().isEmpty());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void thePlaceOfABlockHoldsItsCode(String name) {
        Draft page = ShippedText.draft(ShippedText.of(name));
        for (Part part : page.page().orElseThrow().parts()) {
            if (part instanceof Part.Steps steps) {
                assertEquals(steps.code(), page.text().at(page.place(part)) + "\n");
            } else if (part instanceof Part.Prose prose) {
                assertEquals(prose.markdown(), page.text().at(page.place(part)).stripTrailing());
            }
        }
    }
}
