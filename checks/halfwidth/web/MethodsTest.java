package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import halfwidth.method.MethodSources;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A review asks the compiler once for each text of a page. */
class MethodsTest {
    private static final MethodSources FOUND = MethodSources.of(page("Lengths"), List.of());

    private final List<String> asked = new ArrayList<>();
    private final Methods methods = new Methods(this::lookUp);

    private MethodSources lookUp(Page page, List<Step> steps) {
        asked.add(page.text());
        return FOUND;
    }

    private static Page page(String title) {
        return Pages.parse(
                "stage/page",
                Path.of("page.md"),
                """
                # %s

                ```csv inputs
                name,unit,kind,example,label
                length,mm,number,5,Length
                ```

                ```java
                double twice = 2 * length; // mm
                ```

                ```csv results
                name,unit,decimals,label
                twice,mm,0,Twice
                ```
                """
                        .formatted(title));
    }

    @Test
    void aPageReadAgainAsksNothingOfTheCompiler() {
        MethodSources first = methods.of(page("Lengths"), List.of());
        assertSame(first, methods.of(page("Lengths"), List.of()));
        assertEquals(1, asked.size());
    }

    @Test
    void aPageWithOneLetterChangedIsAskedFor() {
        methods.of(page("Lengths"), List.of());
        methods.of(page("Length"), List.of());
        assertEquals(2, asked.size());
    }

    @Test
    void thoseLookedAtLastStay() {
        for (int i = 0; i < 60; i++) {
            methods.of(page("Page " + i), List.of());
            methods.of(page("Page 0"), List.of());
        }
        assertEquals(60, asked.size(), "the one that is looked at all the time is never lost");
        methods.of(page("Page 1"), List.of());
        assertEquals(61, asked.size(), "one not looked at for long is");
    }
}
