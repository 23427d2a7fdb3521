package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An engineer's copy of a shipped page in which one step is another. */
@Tag("long")
class AdaptedPageTest {
    private static final String NAME = "array/prediction";
    private static final String STEP = "Detector.LINEAR_ENVELOPE.weightOfFirst(";
    private static final Path SHIPPED = Path.of("notebooks");

    @TempDir private Path folder;

    /** A receiver that detects the square of the envelope, where the page has a linear detector. */
    @Test
    void changesWhatRestsOnTheStepAndNothingElse() throws IOException {
        String text = Files.readString(SHIPPED.resolve(NAME + ".md"));
        assertEquals(1, text.split(java.util.regex.Pattern.quote(STEP), -1).length - 1);
        Path copy = folder.resolve(NAME + ".md");
        Files.createDirectories(copy.getParent());
        Files.writeString(copy, text.replace(STEP, "Detector.SQUARE_LAW.weightOfFirst("));

        Map<String, Double> shipped = numbers(new Pages(SHIPPED).find(NAME));
        Map<String, Double> adapted = numbers(new Pages(folder).find(NAME));
        // The power of each carrier is its weight, so by hand, from the amplitudes of the shipped
        // page: w = A²/(A² + B²).
        double a = shipped.get("courseAmplitude");
        double b = shipped.get("clearanceAmplitude");
        double weight = a * a / (a * a + b * b);
        double ddm = weight * shipped.get("courseDdm") + (1 - weight) * shipped.get("clearanceDdm");
        assertEquals(weight, adapted.get("courseWeight"), 1e-12);
        assertEquals(ddm, adapted.get("ddmThere"), 1e-12);
        assertEquals(List.of("courseWeight", "ddmThere"), differing(shipped, adapted));
    }

    private static List<String> differing(Map<String, Double> one, Map<String, Double> other) {
        assertEquals(one.keySet(), other.keySet());
        List<String> names = new ArrayList<>(one.keySet());
        names.removeIf(name -> one.get(name).equals(other.get(name)));
        names.sort(null);
        return names;
    }

    private static Map<String, Double> numbers(Page page) {
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            return open.run(Values.of(Filled.example(page))).steps().stream()
                    .filter(ran -> shown(ran) instanceof Shown.Real)
                    .collect(Collectors.toMap(ran -> ran.step().name(), real()));
        }
    }

    private static Function<Run.Ran, Double> real() {
        return ran -> ((Shown.Real) shown(ran)).value();
    }

    private static Shown shown(Run.Ran ran) {
        return assertInstanceOf(Outcome.Done.class, ran.outcome(), ran::toString).value();
    }
}
