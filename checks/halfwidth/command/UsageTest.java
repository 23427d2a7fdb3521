package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a command that is none, and of a Java that will not do. */
class UsageTest {
    @ParameterizedTest
    @CsvSource({"lst, list", "verfy, verify", "histroy, history", "exprot, export"})
    void namesTheCommandThatIsNear(String typed, String near) {
        Program program = Program.here(typed, "--job", "x");
        Expect.status(2, program);
        Expect.complained(program, "halfwidth " + near);
    }

    @Test
    void namesAllWhereNoneIsNear() {
        Program program = Program.here("0815");
        Expect.status(2, program);
        Expect.complained(program, "The commands are open, list, run,");
    }

    @ParameterizedTest
    @ValueSource(strings = {"open", "run", "verify", "export"})
    void helpsWithACommand(String command) {
        Program help = Program.here("help", command);
        Expect.status(0, help);
        Expect.said(help, "Usage: halfwidth " + command);
        assertEquals(Program.here(command, "--help").out(), help.out());
    }

    @Test
    void saysInOneSentenceWhatAJavaRuntimeLacks() {
        Program program =
                Program.in(
                        Program.PROJECT,
                        List.of("--limit-modules", "java.base,java.desktop"),
                        "list");
        Expect.status(1, program);
        Expect.complained(program, "needs a whole JDK", "jdk.compiler, jdk.jshell, jdk.httpserver");
        assertEquals(1, program.err().lines().count(), program.err());
        assertEquals("", program.out());
    }

    @Test
    void theVersionSaysWhatHoldsWorkers() {
        Program version = Program.here("--version");
        Expect.status(0, version);
        List<String> lines = version.out().lines().toList();
        assertEquals(2, lines.size(), version.out());
        assertTrue(lines.get(1).matches("Workers are (not )?confined by .+\\."), lines.get(1));
        Program off = Program.in(Program.PROJECT, List.of("-Dhalfwidth.confine=no"), "--version");
        Expect.said(off, "Workers are not confined by the system: switched off by -Dhalfwidth");
    }
}
