package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.vocabulary.Action;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What goes wrong in the field, done to sheets of the invented demo station and to the worked
 * examples: a mark read in reverse, a sector that sags, sides exchanged, a cut whose reading is
 * blank. What may be said follows from the readings, by the rules in the pages' prose.
 */
@Tag("long")
class FieldMishapsTest {
    private static final Fire SWEEP = Fire.at("sweep/ground-check");
    private static final Fire PAIR = Fire.at("monitor/pair-null");
    private static final int AZIMUTH = 0;

    private static Filled demo(Fire fire, String visit) {
        Path folder = Path.of("datasets", "demo", fire.page().name(), visit);
        Filled filled = Filled.none(fire.page()).withInputs(folder.resolve("inputs.csv"));
        for (Part.Readings table : fire.page().readings()) {
            filled = filled.withReadings(table.name(), folder.resolve(table.name() + ".csv"));
        }
        return filled;
    }

    /** The worked example as if it were a station's. */
    private static Filled example(Page page) {
        Filled filled = Filled.none(page);
        Filled example = Filled.example(page);
        for (var entry : example.entries().entrySet()) {
            filled = filled.with(entry.getKey(), entry.getValue());
        }
        for (Part.Readings table : page.readings()) {
            filled = filled.withReadings(table.name(), table.example());
        }
        return filled;
    }

    private static String typed(Optional<Entry> cell) {
        return cell.map(Entry::typed).orElse("");
    }

    /** A sweep with the readings of a transmitter at some azimuths typed otherwise. */
    private static Filled retyped(
            Filled filled,
            int transmitter,
            List<String> azimuths,
            UnaryOperator<String> otherwise) {
        List<List<String>> rows = new ArrayList<>();
        for (List<Optional<Entry>> row : filled.readings().get("sweep")) {
            List<String> cells = new ArrayList<>(row.stream().map(c -> typed(c)).toList());
            boolean there = azimuths.isEmpty() || azimuths.contains(cells.get(AZIMUTH));
            if (there && !cells.get(transmitter).isEmpty()) {
                cells.set(transmitter, otherwise.apply(cells.get(transmitter)));
            }
            rows.add(cells);
        }
        return filled.withReadings("sweep", rows);
    }

    private static String reversed(String typed) {
        return typed.contains("in the 90")
                ? typed.replace("in the 90", "in the 150")
                : typed.replace("in the 150", "in the 90");
    }

    private static Filled with(Filled filled, int transmitter, String azimuth, String typed) {
        return retyped(filled, transmitter, List.of(azimuth), old -> typed);
    }

    private static Filled commissioned() {
        return demo(SWEEP, "2021-06-15");
    }

    @Test
    void theSweepOfTheSeasonIsMetAsFarAsItWasRead() {
        Decided sound = SWEEP.decide(commissioned());
        assertTrue(sound.words("verdict1").startsWith("clearance met"), sound.words("verdict1"));
        assertTrue(sound.says("next", Action.State.FINISHED), sound.words("next"));
    }

    /** 225, 298 and 365 in the 90 next to the course sector on the 150 Hz side. */
    @Test
    void marksReadInReverseNextToTheCourseAreNotMet() {
        Filled filled = example(SWEEP.page());
        filled = with(filled, 1, "3", "225 in the 90");
        filled = with(filled, 1, "4", "298 in the 90");
        filled = with(filled, 1, "5", "365 in the 90");
        Decided decided = SWEEP.decide(filled);
        assertTrue(
                decided.words("verdict1")
                        .startsWith("clearance not met at 3° on the 150 side, 4° on the 150 side"),
                decided.words("verdict1"));
        assertEquals(-0.365, decided.number("inner150of1").orElseThrow(), 1e-12);
        assertTrue(decided.says("next", Action.State.TO_DO), decided.words("next"));
    }

    @Test
    void aSectorThatSagsNextToTheCourseIsNotMet() {
        Filled filled = example(SWEEP.page());
        filled = with(filled, 2, "3", "100 in the 150");
        filled = with(filled, 2, "4", "60 in the 150");
        filled = with(filled, 2, "5", "20 in the 150");
        Decided decided = SWEEP.decide(filled);
        assertTrue(decided.words("verdict2").contains("3° on the 150 side"), "3°");
        assertTrue(decided.words("verdict2").contains("5° on the 150 side"), "5°");
        assertEquals(0.020, decided.number("inner150of2").orElseThrow(), 1e-12);
    }

    @Test
    void aSweepWithItsSidesExchangedIsNotMetAndHasNoCourse() {
        Decided decided = SWEEP.decide(retyped(commissioned(), 1, List.of(), m -> reversed(m)));
        assertTrue(
                decided.words("verdict1").startsWith("clearance not met"),
                decided.words("verdict1"));
        assertTrue(decided.words("mistyped").contains("sides exchanged?"), "the crew is asked");
        assertTrue(decided.number("shift1").isEmpty(), "no course line is made up");
        assertFalse(decided.says("next", Action.State.FINISHED));
    }

    /** A slip within the course sector, where no clearance is judged. */
    @Test
    void aToneInDoubtBarsMetUntilItIsReadAgainByName() {
        Filled slipped = retyped(commissioned(), 1, List.of("1"), m -> reversed(m));
        Decided doubted = SWEEP.decide(slipped);
        assertTrue(
                doubted.words("verdict1").startsWith("not judged before the tone is read again"),
                doubted.words("verdict1"));
        assertTrue(doubted.number("shift1").isEmpty(), "nor is a course line drawn through it");
        List<List<String>> rows = new ArrayList<>();
        for (List<Optional<Entry>> row : slipped.readings().get("sweep")) {
            List<String> cells = new ArrayList<>(row.stream().map(c -> typed(c)).toList());
            cells.set(4, cells.get(AZIMUTH).equals("1") ? "T. Echnician" : "");
            rows.add(cells);
        }
        Decided confirmed = SWEEP.decide(slipped.withReadings("sweep", rows));
        assertTrue(
                confirmed.words("verdict1").startsWith("clearance met"),
                confirmed.words("verdict1"));
        assertTrue(confirmed.number("shift1").isPresent());
    }

    /** Returns exchanged at the combiner: an adapter in one side acts as if in the other. */
    @Test
    void aPairWithItsSidesExchangedIsNotCut() {
        Filled filled = demo(PAIR, "pair-1-reading-1");
        assertTrue(PAIR.decide(filled).action("advice").orElseThrow().hasAmount());
        String other = filled.entries().get("adapterSide").typed().equals("150") ? "90" : "150";
        assertCutsNothing(PAIR.decide(filled.with("adapterSide", other)));
    }

    /** 30 in the 90, with the adapter in the 150 Hz side 95 in the 150. */
    @Test
    void anAdapterThatMovesTheReadingTheWrongWayOrdersNoCut() {
        assertCutsNothing(
                PAIR.decide(
                        example(PAIR.page())
                                .with("carrierDdm", "0")
                                .with("adapterSide", "150")
                                .with("withAdapter", "95 in the 150")
                                .withReadings("cuts", List.of(List.of("0", "0", "30 in the 90")))));
    }

    private static void assertCutsNothing(Decided decided) {
        assertTrue(decided.says("advice", Action.State.HELD), decided.words("advice"));
        for (String figure : List.of("side", "nextCutOnTheRule", "nextCutMillimetres", "whole")) {
            assertEquals("none", decided.words(figure), figure);
        }
    }

    /**
     * 24 in the 150, null with 20° in the 150 Hz side: 20° at 4° an inch are 5 in on the 90 Hz
     * side. 3 1/2 in of them are cut, so 1 1/2 in, 38.1 mm, are left, whatever is read.
     */
    @Test
    void aCutCountsWhileItsReadingIsBlank() {
        Decided decided =
                PAIR.decide(
                        example(PAIR.page())
                                .with("linePerInch", "4")
                                .with("linePerInchUncertainty", "0.05")
                                .with("carrierDdm", "0")
                                .with("adapterSide", "150")
                                .with("adapterLength", "20")
                                .with("withAdapter", "0")
                                .withReadings(
                                        "cuts",
                                        List.of(
                                                List.of("0", "0", "24 in the 150"),
                                                List.of("0", "3 1/2", ""))));
        assertEquals(38.1, decided.number("whole").orElseThrow(), 0.05);
        Action advice = decided.action("advice").orElseThrow();
        assertEquals(Action.State.TO_DO, advice.state());
        assertFalse(advice.hasAmount(), advice.words());
        assertEquals("none", decided.words("nextCutMillimetres"));
    }
}
