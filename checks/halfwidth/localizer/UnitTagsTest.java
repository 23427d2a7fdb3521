package halfwidth.localizer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Every number of the physics states its unit where a machine can read it. */
class UnitTagsTest {
    @Test
    void everyNumberOfThePhysicsStatesItsUnit() throws IOException {
        List<DocumentedNumber> numbers = NumberReader.read(physics());

        assertTrue(numbers.size() > 400, "only " + numbers.size() + " numbers were found");
        assertEquals("", problems(numbers));
    }

    @Test
    void findsWhatIsMissing() throws IOException {
        assertEquals("states no unit", problemOf("@param length of the piece\n * @return φ (deg)"));
        assertEquals("states no unit", problemOf("@param length (m)"));
        assertEquals("states no unit", problemOf("@param length (yd)\n * @return φ (deg)"));
        assertEquals(
                "states more than one unit, [m, mm]",
                problemOf("@param length (m), or (mm)\n * @return φ (deg)"));
        assertEquals("", problemOf("@param length L (m), in (0, 1]\n * @return φ (deg)"));
        assertEquals("", problemOf("@param length (unit of\n * the figure)\n * @return φ (°/m)"));
    }

    private static String problemOf(String tags) throws IOException {
        String code =
                "/** A. */ public final class A {\n/**\n * Turns.\n * "
                        + tags
                        + "\n */\npublic double turn(double length) { return length; } }";
        JavaFileObject file =
                new SimpleJavaFileObject(URI.create("A.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreErrors) {
                        return code;
                    }
                };
        return problems(NumberReader.read(List.of(file))).replaceAll(".*\\) (states .*): .*", "$1");
    }

    private static Iterable<? extends JavaFileObject> physics() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("kernel/halfwidth/localizer"))) {
            return ToolProvider.getSystemJavaCompiler()
                    .getStandardFileManager(null, null, null)
                    .getJavaFileObjectsFromPaths(
                            files.filter(file -> file.toString().endsWith(".java")).toList());
        }
    }

    private static String problems(List<DocumentedNumber> numbers) {
        return String.join(
                "\n",
                numbers.stream()
                        .map(DocumentedNumber::problem)
                        .filter(problem -> !problem.isEmpty())
                        .toList());
    }
}
