package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whether bubblewrap is there and works is found out once, quickly, and told. */
@Timeout(60)
@EnabledOnOs(OS.LINUX)
class ConfinementTest {
    private static final Duration LONG = Duration.ofSeconds(30);

    @TempDir Path folder;

    private Confinement found() {
        return Confinement.find("", "Linux", "relative:/nowhere:" + folder, LONG);
    }

    private static void assertNone(String why, Confinement confinement) {
        assertEquals(Optional.empty(), confinement.by());
        assertTrue(
                confinement.told().startsWith("Workers are not confined by the system: "),
                confinement.told());
        assertTrue(confinement.told().contains(why), confinement.told());
    }

    @Test
    void oneThatWorksIsUsed() throws IOException {
        Path program = FakeBubblewrap.in(folder, FakeBubblewrap.HOLDS_NOTHING);
        Confinement found = found();
        assertEquals(Optional.of(new Bubblewrap(program)), found.by());
        assertEquals(
                "Workers are confined by bubblewrap 0, a fake ("
                        + program
                        + "): no network, nothing written.",
                found.told());
        String tried = Files.readString(Path.of(program + ".options"));
        assertTrue(tried.contains("--unshare-net"), "it is tried as it will be used: " + tried);
    }

    @Test
    void whereItIsAbsentNobodyWaits() {
        assertNone("not installed", found());
        assertNone("for Linux only", Confinement.find("", "Windows 11", "C:\\", LONG));
    }

    @Test
    void itCanBeSwitchedOff() throws IOException {
        FakeBubblewrap.in(folder, FakeBubblewrap.HOLDS_NOTHING);
        assertNone(
                "-Dhalfwidth.confine=no", Confinement.find("no", "Linux", folder.toString(), LONG));
    }

    @Test
    void aFileThatIsNoProgramIsNotTried() throws IOException {
        Files.writeString(folder.resolve("bwrap"), "#!/bin/sh\n");
        assertNone("not installed", found());
    }

    @Test
    void oneThatEndsWellAndIsNoBubblewrapIsNotUsed() throws IOException {
        FakeBubblewrap.in(folder, "#!/bin/sh\nexit 0\n");
        assertNone("does not work here", found());
        FakeBubblewrap.in(folder, "\0\0");
        assertNone("does not", found());
    }

    @Test
    void onlyAbsoluteEntriesOfTheSearchPathCount() throws IOException {
        FakeBubblewrap.in(folder, FakeBubblewrap.HOLDS_NOTHING);
        String relative = Path.of("").toAbsolutePath().relativize(folder).toString();
        assertNone("not installed", Confinement.find("", "Linux", relative, LONG));
    }

    @Test
    void oneThatFailsIsToldWithItsReason() throws IOException {
        FakeBubblewrap.in(
                folder,
                "#!/bin/sh\necho 'bwrap: No permissions to create new namespace' >&2\nexit 1\n");
        assertNone("does not work here: bwrap: No permissions to create new namespace", found());
    }

    @Test
    void oneThatHangsIsLeftAtTheLimit() throws IOException {
        FakeBubblewrap.in(folder, "#!/bin/sh\nsleep 50\n");
        long before = System.nanoTime();
        assertNone(
                "did not answer within 300 ms",
                Confinement.find("", "Linux", folder.toString(), Duration.ofMillis(300)));
        assertTrue(System.nanoTime() - before < 20e9, "it is not waited for");
        assertTrue(
                ProcessHandle.current()
                        .descendants()
                        .noneMatch(
                                one ->
                                        one.isAlive()
                                                && one.info()
                                                        .commandLine()
                                                        .orElse("")
                                                        .contains(folder.toString())),
                "it is ended");
    }

    @Test
    void oneThatLeavesAProcessBehindIsNotWaitedFor() throws IOException {
        FakeBubblewrap.in(folder, "#!/bin/sh\necho bubblewrap 2\nsleep 50 &\nexit 0\n");
        long before = System.nanoTime();
        assertTrue(found().told().contains("bubblewrap 2"), found().told());
        assertTrue(System.nanoTime() - before < 20e9, "its stream is not read to the end");
    }
}
