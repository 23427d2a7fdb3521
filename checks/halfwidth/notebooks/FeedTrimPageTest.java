package halfwidth.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.notebooks.FeedTrimTable.Found;
import halfwidth.page.Filled;
import halfwidth.run.Shown;
import halfwidth.value.EntryRefused;
import halfwidth.vocabulary.EntryPlace;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The feed-trim page in the hands of a crew. */
class FeedTrimPageTest {
    /** 360 · 110.0e6 · 0.0254 / (299792458 · 0.83), c and the inch exact by definition (°/in). */
    private static final double DEGREES_PER_INCH = 360 * 110.0e6 * 0.0254 / (299792458 * 0.83);

    private static FeedTrimTable table;

    @BeforeAll
    static void opensThePage() {
        table = new FeedTrimTable();
    }

    @AfterAll
    static void closesThePage() {
        table.close();
    }

    @Test
    void cutsTheSboFeedForAPositiveMiddleOfOppositeSigns() {
        Found found = table.phasings("0,0,-3,9");
        assertEquals("SBO", found.words("feed"));
        assertEquals(3 / DEGREES_PER_INCH, found.number("whole"), 1e-9);
        // 0.8 of 0.742 in is 0.594 in: nine sixteenths, 14.3 mm.
        assertEquals(9 / 16.0, found.number("nextCut"), 1e-12);
        assertEquals(9 / 16.0 * 25.4, found.number("nextCutMillimetres"), 1e-9);
        assertEquals("9/16 in", found.words("nextCutOnTheRule"));
        assertEquals(6, found.number("halfSpread"), 1e-12);
        assertEquals(-3 - 9 / 16.0 * DEGREES_PER_INCH, found.number("after1"), 1e-9);
        assertEquals(9 - 9 / 16.0 * DEGREES_PER_INCH, found.number("after2"), 1e-9);
        assertEquals(
                "Now cut the SBO feed by 9/16 in (14.3 mm), phase again, enter the new offsets.",
                found.words("advice"));
        assertTrue(found.words("basis").contains("data sheet alone"), found.words("basis"));
    }

    @Test
    void cutsTheCsbFeedForOffsetsThatAreBothNegative() {
        Found found = table.phasings("0,0,-14,-10");
        assertEquals("CSB", found.words("feed"));
        assertEquals(12 / DEGREES_PER_INCH, found.number("whole"), 1e-9);
        // 0.8 of 2.9685 in is 2.3748 in: 37 sixteenths.
        assertEquals(37 / 16.0, found.number("nextCut"), 1e-12);
        assertEquals("2 5/16 in", found.words("nextCutOnTheRule"));
        assertEquals(-14 + 37 / 16.0 * DEGREES_PER_INCH, found.number("after1"), 1e-9);
        assertEquals(2, found.number("halfSpread"), 1e-12);
    }

    @Test
    void cutsNothingWhereTheOffsetsLieEvenlyAboutZero() throws IOException {
        Found found = table.phasings("0,0,-6,6");
        assertEquals("none", found.answer("feed").shownValue());
        assertTrue(found.words("advice").startsWith("Stop"), found.words("advice"));
        assertEquals("none", found.answer("nextCut").shownValue());
        assertEquals("finished", found.answer("advice").ruling().words());
        assertEquals(6, found.number("halfSpread"), 1e-12);
        assertEquals(-6, found.number("after1"), 1e-12);
        assertDrawn(found);
    }

    @Test
    void trimsForTheOnlyTransmitterThatWasPhased() throws IOException {
        Found found = table.phasings("0,0,,8");
        assertEquals("SBO", found.words("feed"));
        assertEquals(8 / DEGREES_PER_INCH, found.number("whole"), 1e-9);
        assertEquals(0, found.number("halfSpread"), 0);
        assertInstanceOf(Shown.Nothing.class, found.result("after1"));
        assertDrawn(found);
    }

    private static void assertDrawn(Found found) throws IOException {
        byte[] png = table.picture(found);
        assertEquals(720, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    }

    @Test
    void expectsOffsetsFromTheLastCutWhereATransmitterWasReadBeforeIt() {
        // Transmitter 1 needs 4° less than transmitter 2, at the first phasing and ever after; by
        // its old reading of -14 alone it would seem to be 10° behind. The offsets' steps and the
        // uncertainty of the line leave that to some tenths of a degree.
        Found found = table.phasings("0,0,-14,-10", "0,1 1/2,,-4");
        assertEquals(-4, found.number("after1") - found.number("after2"), 0.3);
    }

    @Test
    void convertsUnitsAndRefusesThoseOfAnotherKind() {
        Filled filled =
                FeedTrimTable.page()
                        .with("smallestCut", "2 mm")
                        .withReadings("phasing", FeedTrimTable.rows("40 mm,0,3,3"));
        Found found = table.run(filled);
        // 3° are 0.7421 in, 18.85 mm; of that 0.8 is 15.08 mm. The 40 mm cut before the first
        // phasing count for nothing.
        assertEquals(14, found.number("nextCutMillimetres"), 1e-9);
        assertEquals(40e-3, found.step("netCut"), 1e-12);
        refused("smallestCut", "40 Hz", "Hz");
        refused("smallestCut", "40 mm", "1 in");
        refused("frequency", "40 mm", "mm");
    }

    private static void refused(String field, String typed, String named) {
        EntryRefused refusal =
                assertThrows(EntryRefused.class, () -> FeedTrimTable.page().with(field, typed));
        assertTrue(refusal.getMessage().contains("(" + field + ")"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains(named), refusal.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,0,8,12 | ,0,4,8 | is blank; type all that was done up to here, 0 for nothing",
                "0,,8,12 | 1,0,4,8 | is blank; type all that was done up to here, 0 for nothing",
                "0,0,, | 1,0,4,8 | is blank, and so is offset 2; type at least one offset",
                "0,0,-150,60 | 1,0,-154,56 | row 1: offsets -150.0 and 60.0 deg differ by more",
                "2,0,8,12 | 1,0,4,8 | is less than in the row above; type all that was done up to"
                        + " here",
                "0,0,8,12 | 1,0,12,16 | offset 1 changed by -157.5 deg for each metre cut (-4.00 deg"
                        + " for each inch)",
                "0,0,8,12 | 1,0,12,16 | moved the wrong way; wrong line cut, or a sign mistyped?",
                "0,0,8,12 | 1,0,4,-8 | offset 2 changed by 787.4 deg for each metre cut",
                "0,0,8,12 | 0,1,4,8 | moved the wrong way",
            })
    void refusesARecordThatCannotBeTrueAndSaysWhatToDo(String one, String two, String words) {
        Found found = table.phasings(one, two);
        assertTrue(found.failures().contains(words), found::failures);
        assertFalse(found.run().finals().containsKey("nextCut"), "no cut is given");
    }

    @ParameterizedTest
    @CsvSource({
        "0;0;8;12,;0;4;8,SBO cut,2",
        "0;;8;12,1;0;4;8,CSB cut,1",
        "2;0;8;12,1;0;4;8,SBO cut,2"
    })
    void refusesACutAtItsCell(String one, String two, String column, int row) {
        Found found = table.phasings(one.replace(';', ','), two.replace(';', ','));
        assertEquals(new EntryPlace("phasing", row, column), found.refused());
        assertTrue(
                found.answer("nextCut")
                        .ruling()
                        .words()
                        .contains("cannot calculate: phasing row %s, %s".formatted(row, column)),
                found.answer("nextCut").ruling().words());
    }

    /** 12° are 2.97 in by the data sheet; 3/4 in of them are cut, phased again or not. */
    @Test
    void countsACutThatWasNotPhasedAfterAndAdvisesNoOther() {
        Found found = table.phasings("0,0,-14,-10", "0,3/4,,");
        assertEquals(12 / DEGREES_PER_INCH - 0.75, found.number("whole"), 1e-9);
        assertEquals("to do", found.answer("advice").ruling().words());
        assertTrue(found.words("advice").startsWith("Phase again"), found.words("advice"));
        assertEquals("none", found.answer("nextCut").shownValue());
        assertEquals("none", found.answer("after1").shownValue());
    }

    @Test
    void namesTheOtherFeedAfterAnOvershoot() {
        // 10° were to go; 3 in took 12.1 of them.
        Found found = table.phasings("0,0,12,8", "3,0,0,-4");
        assertEquals("CSB", found.words("feed"));
        assertTrue(
                found.words("advice")
                        .startsWith(
                                "Too much was cut from the other feed: now cut the CSB feed by"),
                found.words("advice"));
        assertTrue(found.number("nextCut") <= 2.1 / DEGREES_PER_INCH, "not back beyond the middle");
    }

    @ParameterizedTest
    @CsvSource({
        "110.0 MHz, 0.66, 5.083",
        "110.0 MHz, 0.695, 4.828",
        "110.0 MHz, 0.80, 4.194",
        "110.0 MHz, 0.83, 4.042",
        "110.0 MHz, 0.85, 3.947",
        "110.0 MHz, 0.88, 3.813",
        "110.0 MHz, 0.95, 3.532",
        "108.10 MHz, 0.83, 3.9725",
        "111.95 MHz, 0.83, 4.1140"
    })
    void computesThePhaseOfAnInchOfCoaxialCable(String frequency, String factor, String degrees) {
        // Nominal velocity factors of solid to air-spaced coaxial cables, and the lowest and
        // highest
        // localizer channel (ICAO Annex 10 Vol I, 3.1.6: 108.10 and 111.95 MHz). The figures are
        // 360 f/(c VF) by hand, c = 299792458 m/s (SI) and the inch 25.4 mm exact, to one unit of
        // the last digit, since some are cut off there and not rounded.
        Filled filled =
                FeedTrimTable.page()
                        .with("frequency", frequency)
                        .with("velocityFactor", factor)
                        .withReadings("phasing", FeedTrimTable.rows("0,0,8,8"));
        double digit = Math.pow(10, degrees.indexOf('.') + 1.0 - degrees.length());
        Found found = table.run(filled);
        assertEquals(Double.parseDouble(degrees), found.step("sheetPerInch"), digit);
        assertEquals(Double.parseDouble(degrees), found.number("degreesPerInch"), digit);
    }
}
