package halfwidth.localizer.monitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReturnLinesTest {
    private static final Estimate BETA = new Estimate(150, 3);
    private static final CutRule RULE = new CutRule(0.001, 0.5, 1);

    private static ReturnLine line(String name, double delay) {
        return ReturnLine.ofDelay(name, ArraySide.ON_150, delay);
    }

    private static ReturnLines set(ReturnLine... lines) {
        return new ReturnLines(List.of(lines), BETA, 0.1, 0.05);
    }

    @Test
    void cutsEveryLineToTheShortest() {
        // 350 is 10 short of a turn: the lines are at −10, 10 and 25 deg.
        CutList list =
                set(line("1", 10), line("2", 350), line("3", 25)).cutList(ArraySide.ON_150, RULE);
        assertEquals("2", list.shortest());
        assertEquals(List.of("2", "1", "3"), list.cuts().stream().map(LineCut::name).toList());
        assertEquals(0, list.cuts().get(0).cut());
        // 20/150 m = 133.33 mm, 35/150 m = 233.33 mm; 0.33 mm of each is 0.05 deg left over.
        LineCut first = list.cuts().get(1);
        assertEquals(0.13333, first.length().value(), 0.00001);
        assertEquals(133, first.cutMillimetres(), 1e-9);
        assertEquals(133 / 25.4, first.cutInches(), 1e-9);
        assertEquals(0.05, first.residual().value(), 1e-9);
        assertEquals(233, list.cuts().get(2).cutMillimetres(), 1e-9);
        assertEquals(0.05, list.residualSpread(), 1e-9);
    }

    @Test
    void carriesTheUncertaintyOfPhaseAndLine() {
        LineCut cut =
                set(line("1", 0), line("2", 30)).cutList(ArraySide.ON_150, RULE).cuts().get(1);
        // Two readings of 0.1 deg: 0.1/√6 = 0.040825 deg; after 0.2 m of (150 ± 3) deg/m, 0.6 deg.
        assertEquals(0.040825, cut.excess().standardUncertainty(), 1e-6);
        assertEquals(Math.hypot(0.040825, 0.6), cut.residual().standardUncertainty(), 1e-6);
    }

    @Test
    void keepsTheSidesApart() {
        ReturnLines both =
                set(
                        line("1", 10),
                        line("2", 20),
                        ReturnLine.ofDelay("3", ArraySide.ON_90, 190),
                        ReturnLine.ofDelay("4", ArraySide.ON_90, 215));
        assertEquals("1", both.cutList(ArraySide.ON_150, RULE).shortest());
        CutList other = both.cutList(ArraySide.ON_90, RULE);
        assertEquals("3", other.shortest());
        assertEquals(25, other.cuts().get(1).excess().value(), 1e-9);
        assertEquals(TurnsKnown.ASSUMED, other.turnsKnown());
    }

    @Test
    void takesTransmissionPhasesTheOtherWayRound() {
        ReturnLine lags = ReturnLine.ofTransmissionPhase("1", ArraySide.ON_90, -30);
        assertEquals(30, lags.delay(), 1e-12);
        assertEquals(330, line("2", -30).delay(), 1e-12);
        assertEquals(0, line("3", 360).delay());
    }

    /** Lines of hidden lengths within half a turn, each phase taken modulo a turn. */
    @Law
    void findsHiddenLengthsWithinHalfATurn(Draw draw) {
        List<Double> hidden = draw.list(2, 8, () -> draw.between(0, 175));
        double reference = draw.between(0, 360);
        List<ReturnLine> lines = new ArrayList<>();
        for (int i = 0; i < hidden.size(); i++) {
            lines.add(line("" + i, (hidden.get(i) + reference) % 360));
        }
        double least = hidden.stream().mapToDouble(h -> h).min().orElseThrow();
        CutList list = new ReturnLines(lines, BETA, 0.1, 0.05).cutList(ArraySide.ON_150, RULE);
        assertEquals(TurnsKnown.ASSUMED, list.turnsKnown());
        for (LineCut cut : list.cuts()) {
            double expected = hidden.get(Integer.parseInt(cut.name())) - least;
            assertEquals(expected, cut.excess().value(), 1e-9);
            assertTrue(cut.residual().value() >= -1e-6, "cut too much");
            assertTrue(cut.residual().value() < 150 * 0.001 + 1e-6, "cut too little");
        }
    }

    /** Lines metres apart, told by a tape that is up to 0.3 m off. */
    @Law
    void tellsWholeTurnsByTape(Draw draw) {
        List<Double> lengths = draw.list(2, 6, () -> draw.between(60, 75));
        double slip = draw.between(-0.3, 0.3);
        List<ReturnLine> lines = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            double tape = lengths.get(i) + (i % 2 == 0 ? slip : -slip);
            lines.add(line("" + i, 150 * lengths.get(i) % 360).withTapeLength(tape));
        }
        Estimate sure = new Estimate(150, 0.1);
        CutList list = new ReturnLines(lines, sure, 0.1, 0.2).cutList(ArraySide.ON_150, RULE);
        assertEquals(TurnsKnown.BY_LENGTH, list.turnsKnown());
        double least = lengths.stream().mapToDouble(l -> l).min().orElseThrow();
        for (LineCut cut : list.cuts()) {
            double expected = lengths.get(Integer.parseInt(cut.name())) - least;
            assertEquals(expected, cut.length().value(), 1e-9);
        }
    }

    @Test
    void warnsWhereATurnCannotBeToldFromALength() {
        CutList list =
                set(line("1", 0), line("2", 120), line("3", 240)).cutList(ArraySide.ON_150, RULE);
        assertEquals(TurnsKnown.NO, list.turnsKnown());
        // A turn at 150 deg/m is 2.40 m.
        assertTrue(list.warnings().get(0).contains("(2.40 m)"), list.warnings().get(0));
    }

    @Test
    void warnsWhereTapeAndPhaseDisagree() {
        // 1.15 m apart by tape is 172.5 deg, but the phases are equal: none or a turn?
        CutList list =
                set(line("1", 0).withTapeLength(60), line("2", 0).withTapeLength(61.15))
                        .cutList(ArraySide.ON_150, RULE);
        assertEquals(TurnsKnown.NO, list.turnsKnown());
        assertTrue(list.warnings().get(0).contains("2 against 1"));
    }

    @Test
    void saysThatLengthsOfSomeLinesOnlyAreNoHelp() {
        CutList list =
                set(line("1", 0).withTapeLength(60), line("2", 20)).cutList(ArraySide.ON_150, RULE);
        assertTrue(list.warnings().get(0).contains("No length by tape for 2"));
        assertEquals(TurnsKnown.ASSUMED, list.turnsKnown());
    }

    @Test
    void refusesLinesThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> line(" ", 0));
        assertThrows(IllegalArgumentException.class, () -> line("1", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> line("1", 361));
        assertThrows(IllegalArgumentException.class, () -> line("1", 0).withTapeLength(-1));
        assertThrows(
                IllegalArgumentException.class,
                () -> ReturnLine.ofDelay("1", ArraySide.NEITHER, 0));
        assertThrows(IllegalArgumentException.class, () -> set(line("1", 0), line("1", 10)));
        assertThrows(
                IllegalArgumentException.class,
                () -> set(line("1", 0)).cutList(ArraySide.ON_90, RULE));
    }
}
