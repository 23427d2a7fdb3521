package halfwidth.localizer.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsTest {
    private static final String HEAD =
            "key,quantity,category,least,most,unit,document,section,status,note\n";
    private static final String ROW = "shift,Shift,I,-10.5,10.5,m,Book,1.2,second-hand,\n";

    private static Limits read(String table) throws IOException {
        return Limits.read(new StringReader(table), "own.csv");
    }

    private static String refusal(String table) {
        return assertThrows(IllegalArgumentException.class, () -> read(table)).getMessage();
    }

    @Test
    void findsTheFigureOfACategory() throws IOException {
        Limit limit = read(HEAD + ROW).of("shift", "I");

        assertEquals(10.5, limit.most("m"));
        assertEquals("-10.5 to 10.5 m", limit.words());
        assertEquals("Book, 1.2 (second-hand)", limit.source().citation());
    }

    @Test
    void takesTheFigureOfAllWhereACategoryHasNoneOfItsOwn() throws IOException {
        Limits limits = read(HEAD + ROW + "shift,Shift,any,-9,9,m,Book,,confirmed,\n");

        assertEquals(10.5, limits.of("shift", "I").most("m"));
        assertEquals(9, limits.of("shift", "II").most("m"));
        assertEquals(9, limits.of("shift").most("m"));
    }

    @Test
    void isMetOnTheLimit() throws IOException {
        Limit limit = read(HEAD + ROW).of("shift", "I");

        assertTrue(limit.isMetBy(-10.5));
        assertFalse(limit.isMetBy(-10.500001));
        assertThrows(IllegalArgumentException.class, () -> limit.isMetBy(Double.NaN));
    }

    @Test
    void refusesAnUnknownKeyWithThoseThereAre() throws IOException {
        Limits limits = read(HEAD + ROW);

        String message =
                assertThrows(IllegalArgumentException.class, () -> limits.of("shaft")).getMessage();
        assertTrue(message.contains("shift") && message.contains("own.csv"), message);
        message =
                assertThrows(IllegalArgumentException.class, () -> limits.of("shift", "II"))
                        .getMessage();
        assertTrue(message.endsWith("own.csv: I"), message);
    }

    @Test
    void refusesAnotherUnitThanExpected() throws IOException {
        Limit limit = read(HEAD + ROW).of("shift", "I");

        assertThrows(IllegalStateException.class, () -> limit.most("ft"));
        assertThrows(IllegalStateException.class, () -> limit.nominal("m"));
    }

    @Test
    void refusesWithFileAndLine() {
        assertTrue(refusal("key,most\n").startsWith("own.csv:1: columns must be"));
        assertTrue(
                refusal(HEAD + ROW + ROW.replace("10.5,m", "1O.5,m"))
                        .equals("own.csv:3: most \"1O.5\" must be a number"));
        assertTrue(refusal(HEAD + ROW.replace("second-hand", "sure")).startsWith("own.csv:2: "));
        assertTrue(refusal(HEAD + "shift,Shift\n").startsWith("own.csv:2: row must have"));
        assertTrue(refusal(HEAD + ROW.replace("-10.5,10.5", ",")).contains("least or a most"));
        assertTrue(refusal(HEAD + ROW.replace("-10.5,10.5", "10,-10")).contains("backwards"));
        assertTrue(refusal(HEAD + ROW + ROW).contains("must stand once for category I"));
    }

    @Test
    void readsAStationsOwnFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("own limits.csv");
        Files.writeString(file, HEAD + ROW);

        assertEquals(1, Limits.read(file).all().size());
    }

    /** The figures of the standards, typed here a second time to catch a slip in the table. */
    @ParameterizedTest
    @CsvSource({
        // ICAO Annex 10 Vol I, 3.1.3.6.1
        "alignment.annex10, I, -10.5, 10.5, m",
        "alignment.annex10, II, -7.5, 7.5, m",
        "alignment.annex10, III, -3, 3, m",
        // 3.1.3.7
        "sensitivity.nominal, any, 0.00145, 0.00145, 1/m",
        "sensitivity.tolerance, I, -17, 17, %",
        "sensitivity.tolerance, III, -10, 10, %",
        // 3.1.3.5.1 and 3.1.3.5.3.6
        "modulation.depth, any, 18, 22, %",
        "sdm.coverage, any, 30, 60, %",
        // FAA AIM 1-1-9.b.2; USSFIM change 10
        "width.faa-threshold, any, 700, 700, ft",
        "width.faa-tailored, any, 3, 6, deg"
    })
    void holdsThePublishedFigures(
            String key, String category, double least, double most, String unit) {
        Limit limit = Limits.published().of(key, category);

        assertEquals(least, limit.least(unit));
        assertEquals(most, limit.most(unit));
    }

    @Test
    void citesADocumentForEveryPublishedFigure() {
        for (Limit limit : Limits.published().all()) {
            String citation = limit.source().citation();
            assertTrue(citation.length() > 10, limit.key());
            assertTrue(
                    limit.category().matches("I|II|III|any"), limit.key() + " " + limit.category());
            assertTrue(limit.key().matches("[a-z0-9]+(-[a-z0-9]+)*\\.[a-z0-9-]+"), limit.key());
        }
    }

    @Test
    void isNoEasierForAHigherCategory() {
        Limits limits = Limits.published();
        for (Limit limit : limits.all()) {
            if (limit.category().equals("I") && limits.has(limit.key(), "III")) {
                Limit higher = limits.of(limit.key(), "III");
                assertTrue(higher.most().orElse(9e9) <= limit.most().orElse(9e9), limit.key());
                assertTrue(higher.least().orElse(-9e9) >= limit.least().orElse(-9e9), limit.key());
            }
        }
    }
}
