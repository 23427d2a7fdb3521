package halfwidth.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios between units are those of NIST Special Publication 811 (2008), appendix B. */
class PageProofTest {
    private static final List<String> IMPORTS =
            List.of("import static java.lang.Math.*;", "import java.util.*;");

    private static PageStatement input(String name, String unit) {
        return new PageStatement(
                PageStatement.Kind.INPUT, "", name, "double", false, "", Map.of("", unit));
    }

    private static Finding found(String expression, String unit) {
        List<PageStatement> page =
                new ArrayList<>(
                        List.of(
                                input("inches", "in"),
                                input("metres", "m"),
                                input("angle", "°"),
                                input("ratio", "1"),
                                input("percent", "%"),
                                input("frequency", "Hz"),
                                input("speed", "m/s"),
                                input("ddm", "DDM"),
                                input("microamps", "µA"),
                                input("level", "dB")));
        page.add(
                new PageStatement(
                        PageStatement.Kind.VARIABLE,
                        "double x = " + expression + ";",
                        "x",
                        "double",
                        true,
                        unit,
                        Map.of()));
        return PageProof.of(IMPORTS, page).get(page.size() - 1);
    }

    @ParameterizedTest
    @CsvSource({
        "25.4 * inches, mm",
        "1000 * metres, mm",
        "inches * 0.0254 + metres, m",
        "360 * frequency / speed, °/m",
        "metres * tan(toRadians(angle)), m",
        "toDegrees(atan(metres / metres)), °",
        "100 * (ratio - 1), %",
        "1 + percent / 100, 1",
        "20 * log10(ratio), dB",
        "'pow(10, level / 20)', 1",
        "'sqrt(pow(metres, 2) + metres * metres)', m",
        "'max(0, ddm) / metres', DDM/m",
        "speed / frequency, m"
    })
    void proves(String expression, String unit) {
        Finding finding = found(expression, unit);

        assertTrue(finding.proof().proved(), finding.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "25 * inches, mm",
        "inches, mm",
        "100 * metres, mm",
        "inches + metres, m",
        "tan(angle), 1",
        "sin(toDegrees(ratio)), 1",
        "toRadians(angle), °",
        "ratio - 1, %",
        "metres * (1 + percent), m",
        "ddm, µA",
        "microamps, DDM",
        "log10(ratio), dB",
        "'pow(10, level)', 1",
        "metres * metres, m",
        "angle, rad",
        "0.0245, m/in"
    })
    void refuses(String expression, String unit) {
        assertTrue(found(expression, unit).refused().isPresent(), expression);
    }

    @Test
    void namesBothUnits() {
        assertEquals(
                "The step states mm, and its formula gives in.",
                found("2 * inches", "mm").refused().orElseThrow());
    }

    /** A method may make another unit, and one that is not known may make any. */
    @Test
    void aMethodDoesNotKeepTheUnitOfWhatItIsCalledOn() {
        String squares = "java.util.stream.DoubleStream.of(metres).map(x -> x * x).sum()";
        String column = "tech.tablesaw.api.DoubleColumn.create(\"x\", new double[] {metres})";

        assertTrue(found(squares, "m").refused().isPresent());
        assertTrue(found(column + ".variance()", "m").refused().isPresent());
        assertTrue(found(column + ".variance()", "m²").proof().proved());
        for (String unit : List.of("m", "m²", "1")) {
            Finding unknown = found(column + ".rolling(2).sum().getDouble(1)", unit);
            assertFalse(unknown.proof().proved());
            assertTrue(unknown.refused().isEmpty());
        }
    }

    @Test
    void saysWhyNothingIsProved() {
        Finding finding = found("new Random().nextGaussian()", "m");

        assertFalse(finding.proof().proved());
        assertTrue(finding.refused().isEmpty());
        assertFalse(finding.proof().why().isEmpty());
    }
}
