package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Pages;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever goes wrong with its worked example, a sheet does not contradict itself. */
@Tag("long")
class EveryPageUnderFireTest {
    static Stream<String> pages() {
        return new Pages(Path.of("notebooks")).names().stream();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void showsNoFigureThatItsDecisionDenies(String name) {
        Fire fire = Fire.at(name);
        List<String> disagreements =
                fire.rounds(
                        Fire.SETS,
                        random -> new Fire.Round(Mishap.on(fire.page(), random), decided -> ""));
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }
}
