package halfwidth.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.run.Script;
import java.util.List;
import java.util.Map;
import jdk.jshell.JShell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class StatementReaderTest {
    private static JShell shell;
    private static StatementReader reader;

    @BeforeAll
    static void open() {
        shell =
                JShell.builder()
                        .executionEngine(EntryPoints.providing(new EntryPoints()), Map.of())
                        .build();
        reader = new StatementReader(shell.sourceCodeAnalysis());
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    private static List<Statement> read(String text) {
        return reader.read(new Script.Code(20, text, false));
    }

    @Test
    void splitsAtStatementsNotAtLines() {
        List<Statement> read = read("int a = 1; int b = 2;\nint c =\n  a + b;\n");
        assertEquals(
                List.of("int a = 1;", "int b = 2;", "int c =\n  a + b;"),
                read.stream().map(Statement::text).toList());
        assertEquals(List.of(20, 20, 21), read.stream().map(Statement::line).toList());
    }

    @Test
    void takesTheCommentBehindAStatementAlsoBehindTheLast() {
        List<Statement> read = read("int a = 1; // first\nint b = 2; // last");
        assertEquals(List.of("first", "last"), read.stream().map(Statement::comment).toList());
        assertEquals("int b = 2;", read.get(1).text());
    }

    @Test
    void keepsLeadingCommentsAndCountsPastThem() {
        Statement one = read("\n// why\n/* and\n how */\nint a = 1;").get(0);
        assertEquals(24, one.line());
        assertTrue(one.text().startsWith("// why"));
    }

    @Test
    void commentsAloneAreNoStatement() {
        assertEquals(List.of(), read("// nothing\n\n/* at all */\n"));
        assertEquals(List.of(), read(""));
    }

    @Test
    void textThatIsNotJavaIsOneStatement() {
        assertEquals(1, read("this is } not ) java {").size());
        assertEquals(2, read("int a = 1;\nif (a > 0) {").size());
    }

    @Test
    void elseBelongsToItsIf() {
        assertEquals(1, read("if (1 > 0) {\n int a = 1;\n}\nelse {\n int b = 2;\n}").size());
    }

    @Test
    void lineEndingsOfWindowsCountOnce() {
        List<Statement> read = read("int a = 1; // one\r\nint b = 2; // two\r\n");
        assertEquals(List.of(20, 21), read.stream().map(Statement::line).toList());
        assertEquals(List.of("one", "two"), read.stream().map(Statement::comment).toList());
    }
}
