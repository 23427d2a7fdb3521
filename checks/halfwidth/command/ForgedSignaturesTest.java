package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lines of signatures in a journal whose checks were all computed anew: the journal itself has no
 * warning, and only the key tells.
 */
@Tag("long")
class ForgedSignaturesTest {
    private static final String REASON = "Flown and accepted by the inspector";

    @TempDir Path temporary;
    private Scratch scratch;
    private Path job;
    private Path record;

    @BeforeEach
    void write() throws IOException {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/first", "double same = length; // mm", "assert twice == 10 : \"x\";");
        job = scratch.folder().resolve("job");
        program("run", "trial/first", "--set", "length=5", "--job", job.toString(), "--record");
        try (Stream<Path> files = Files.list(job.resolve("records"))) {
            record = files.filter(file -> file.toString().endsWith(".html")).findFirst().get();
        }
    }

    private Program program(String... arguments) {
        return Program.here(
                Stream.concat(
                                Stream.of(arguments),
                                Stream.of("--notebooks", scratch.path("notebooks")))
                        .toArray(String[]::new));
    }

    private void sign(String name, String as, String... more) {
        String[] line = {"sign", record.toString(), "--name", name, "--as", as};
        Program signed =
                program(Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new));
        assertEquals(0, signed.status(), signed.out() + signed.err());
    }

    private Program verify() {
        return program("verify", record.toString());
    }

    private static void assertSays(Program program, int status, String... words) {
        String all = program.out() + program.err();
        assertEquals(status, program.status(), all);
        assertFalse(all.contains("Journal: "), "the journal's own checks hold: " + all);
        for (String one : words) {
            assertTrue(all.contains(one), one + " is not in: " + all);
        }
    }

    private void signBoth() {
        sign("P. Reparer", "prepared", "--remark", "windy");
        sign("R. Viewer", "checked");
    }

    @Test
    void aSignatureHasTheKeyOfWhoSignedEverywhere() throws IOException {
        signBoth();
        Program verified = verify();
        assertSays(verified, 0, "signed here as prepared by P. Reparer", "with key ");
        Matcher key =
                Pattern.compile("as checked by R\\. Viewer, \\S+, with key (([0-9a-f]{4} ?){4})")
                        .matcher(verified.out());
        assertTrue(key.find(), verified.out());
        String fingerprint = key.group(1).strip();
        Program history = Program.here("history", "--job", job.toString());
        assertTrue(history.out().contains("with key " + fingerprint), history.out());
        program("run", "trial/first", "--job", job.toString(), "--record");
        Program sheet = program("run", "trial/first", "--job", job.toString());
        assertTrue(sheet.out().contains(fingerprint), sheet.out());
        try (Stream<Path> files = Files.list(job.resolve("records"))) {
            Path later =
                    files.filter(file -> file.toString().endsWith(".html"))
                            .filter(file -> !file.equals(record))
                            .findFirst()
                            .get();
            String text = Files.readString(later);
            assertTrue(text.contains("<dt>Checked with key</dt><dd>" + fingerprint), "it heads it");
        }
        assertSays(verify(), 0, "checked by R. Viewer");
    }

    @Test
    void aLineThatSomebodyAddedIsToldToHaveNoKey() throws IOException {
        sign("P. Reparer", "prepared");
        String prepared =
                JournalForger.cells(job).filter(l -> l.contains(",prepared,")).findFirst().get();
        String[] cells = prepared.split(",", -1);
        cells[0] = Integer.toString(Integer.parseInt(cells[0]) + 1);
        cells[4] = "checked";
        cells[10] = "R. Viewer";
        cells[9] = "";
        cells[12] = "";
        cells[13] = "";
        JournalForger.withMore(job, String.join(",", cells));
        assertSays(
                verify(),
                1,
                "signed here as checked by R. Viewer",
                "WITHOUT A KEY",
                "others were signed with a key in this job before it",
                "NOT RUN");
        Program history = Program.here("history", "--job", job.toString());
        assertTrue(history.out().contains("signed without a key"), history.out());
    }

    /** As it stands in every journal of an older program. */
    @Test
    void aJournalWithoutAnyKeyCountsAsBefore() throws IOException {
        signBoth();
        JournalForger.rewritten(job, ForgedSignaturesTest::withoutKey);
        assertSays(
                verify(),
                0,
                "signed here as checked by R. Viewer",
                "WITHOUT A KEY",
                "all 1 results equal");
    }

    private static String withoutKey(String line) {
        String[] cells = line.split(",", -1);
        if (cells[4].equals("prepared") || cells[4].equals("checked")) {
            cells[9] = "";
            cells[12] = "";
            cells[13] = "";
        }
        return String.join(",", cells);
    }

    /** Each in turn: the name, the role, the time, the remark, the content, another's signature. */
    @Test
    void aLineThatSomebodyAlteredDoesNotFitItsKey() throws IOException {
        signBoth();
        String whole = Files.readString(job.resolve("journal.csv"));
        String[][] alterations = {
            {"P. Reparer", "Q. Reparer"},
            {",prepared,", ",checked,"},
            {"windy", "calm"},
            {",2-", ",2-0"}
        };
        for (String[] one : alterations) {
            Files.writeString(job.resolve("journal.csv"), whole);
            JournalForger.rewritten(
                    job, line -> line.contains(",windy") ? line.replace(one[0], one[1]) : line);
            String now = Files.readString(job.resolve("journal.csv"));
            assertFalse(now.equals(whole), one[0]);
            assertSays(verify(), 1, "THE KEY DOES NOT FIT", "NOT RUN");
        }
        Files.writeString(job.resolve("journal.csv"), whole);
        JournalForger.rewritten(
                job, l -> l.contains(",windy") ? l.replaceFirst(",20\\d\\d-", ",2001-") : l);
        assertSays(verify(), 1, "THE KEY DOES NOT FIT");
    }

    /** What was overridden heads a record; whoever takes that off needs the key. */
    @Test
    void whatStoodAgainstASignatureCannotBeTakenAway() throws IOException {
        sign("P. Reparer", "prepared");
        sign("P. Reparer", "checked", "--override", REASON);
        try (Stream<Path> files = Files.list(job.resolve("records"))) {
            Path first = record;
            record =
                    files.filter(file -> file.toString().endsWith(".html"))
                            .filter(file -> !file.equals(first))
                            .findFirst()
                            .get();
        }
        assertSays(verify(), 0, REASON, "with key ");
        JournalForger.rewritten(
                job, line -> line.contains(",despite,") ? line.replace("accepted", "seen") : line);
        assertSays(verify(), 1, "THE KEY DOES NOT FIT");
    }

    @Test
    void anotherKeyThanBeforeIsTold() throws IOException {
        sign("P. Reparer", "prepared");
        String home = System.getProperty("user.home");
        try {
            System.setProperty("user.home", temporary.resolve("other home").toString());
            sign("p reparer", "prepared");
        } finally {
            System.setProperty("user.home", home);
        }
        assertSays(verify(), 0, "p reparer has signed with key ", " before");
    }
}
