package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** The command line that a worker is started with. */
@EnabledOnOs(OS.LINUX)
class BubblewrapTest {
    private static final Bubblewrap BUBBLEWRAP = new Bubblewrap(Path.of("/usr/bin/bwrap"));

    private static String before(List<Path> read, List<Path> written) {
        return String.join(" ", BUBBLEWRAP.before(List.of("java", "Main"), read, written));
    }

    @Test
    void everythingIsReadOnlyWithoutNetworkAndEndsWithTheProgram() {
        String line = before(List.of(), List.of());
        assertTrue(line.startsWith("/usr/bin/bwrap --ro-bind / / "), line);
        for (String held :
                List.of(
                        "--tmpfs /tmp",
                        "--unshare-net",
                        "--unshare-pid",
                        "--die-with-parent",
                        "--cap-drop ALL")) {
            assertTrue(line.contains(held), held + " in " + line);
        }
        assertTrue(line.endsWith(" java Main"), "the command stands last: " + line);
        assertFalse(line.contains(" --bind "), "nothing is written: " + line);
    }

    @Test
    void aProgramInAHiddenFolderIsShownAndNothingBesideIt() throws IOException {
        Path folder = Files.createTempDirectory(Path.of("/tmp"), "halfwidth-check");
        Path jar = Files.createFile(folder.resolve("halfwidth.jar"));
        Path real = jar.toRealPath();
        String line = before(List.of(jar, folder.resolve("missing"), Path.of("/usr")), List.of());
        Files.delete(jar);
        Files.delete(folder);
        String shown = "--ro-bind " + real + " " + real;
        assertTrue(line.indexOf(shown) > line.indexOf("--tmpfs"), line);
        assertEquals(3, line.split("--ro-bind").length, "it and all else: " + line);
    }

    @Test
    void whatIsWrittenIsPutOverWhatIsOnlyRead() throws IOException {
        Path compiled = Files.createTempDirectory(Path.of("/tmp"), "halfwidth-check");
        String line = before(List.of(compiled.getParent()), List.of(compiled));
        Path real = compiled.toRealPath();
        Files.delete(compiled);
        String shown = "--bind " + real + " " + real;
        assertTrue(line.lastIndexOf("--ro-bind") < line.indexOf(" " + shown), line);
    }

    /** Else a link into a hidden folder would lead nowhere. */
    @Test
    void aLinkIsFollowed() throws IOException {
        Path target = Files.createTempFile(Path.of("/tmp"), "halfwidth-check", ".jar");
        Path folder = Files.createTempDirectory(Path.of("target"), "link");
        Path link = Files.createSymbolicLink(folder.resolve("halfwidth.jar"), target);
        String line = before(List.of(link), List.of());
        Path real = target.toRealPath();
        Files.delete(link);
        Files.delete(folder);
        Files.delete(target);
        assertTrue(line.contains("--ro-bind " + real + " " + real), line);
    }
}
