package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The monitor returns of an array and what to cut from each.
 *
 * <p>The sides are kept apart: the sideband signal turns over at the centre of the array, so only
 * lines of one side are to be alike.
 *
 * @param lines all lines measured, of both sides, each name once
 * @param phaseConstant β of the lines (deg/m)
 * @param phaseResolution the step in which a phase is read (deg)
 * @param tapeUncertainty standard uncertainty of a length by tape or reflectometer (m)
 */
public record ReturnLines(
        List<ReturnLine> lines,
        Estimate phaseConstant,
        double phaseResolution,
        double tapeUncertainty) {

    /**
     * @throws IllegalArgumentException if two lines share a name, β is not above 0 and at most 1000
     *     deg/m, the resolution not above 0 and at most 90 deg, or the tape's uncertainty not 0 to
     *     100 m
     */
    public ReturnLines {
        lines = List.copyOf(lines);
        long names = lines.stream().map(ReturnLine::name).distinct().count();
        if (names != lines.size()) {
            throw new IllegalArgumentException("each return line must have a name of its own");
        }
        PhaseLength.checkedPhaseConstant(phaseConstant);
        Require.above("phase resolution", phaseResolution, 0, "deg");
        Require.within("phase resolution", phaseResolution, new Range(0, 90), "deg");
        Require.within("uncertainty of the tape", tapeUncertainty, new Range(0, 100), "m");
    }

    /**
     * Returns the cuts that make the lines of one side as short as its shortest.
     *
     * @param side the side of the array
     * @param rule whose smallest cut the lengths are rounded down to
     * @return the cut list
     * @throws IllegalArgumentException if no line of that side was measured
     */
    public CutList cutList(ArraySide side, CutRule rule) {
        List<ReturnLine> ofSide = lines.stream().filter(l -> l.side() == side).toList();
        if (ofSide.isEmpty()) {
            throw new IllegalArgumentException("no return line was measured on side " + side);
        }
        Unwrapped unwrapped = Unwrapped.of(ofSide, this);
        List<LineCut> cuts = new ArrayList<>();
        for (int i = 0; i < ofSide.size(); i++) {
            cuts.add(cut(ofSide.get(i).name(), unwrapped.phase(i, phaseUncertainty()), rule));
        }
        cuts.sort(Comparator.comparingDouble(c -> c.excess().value()));
        return new CutList(side, cuts, unwrapped.turnsKnown(), unwrapped.warnings());
    }

    private LineCut cut(String name, Estimate phase, CutRule rule) {
        Estimate length = PhaseLength.of(phase, phaseConstant);
        double cut = rule.roundDown(length.value());
        double left = phase.value() - phaseConstant.value() * cut;
        double leftUncertainty =
                Math.hypot(phase.standardUncertainty(), cut * phaseConstant.standardUncertainty());
        return new LineCut(name, phase, length, cut, new Estimate(left, leftUncertainty));
    }

    /** Of the difference of two phases, each within half a step (deg). */
    double phaseUncertainty() {
        double one = Estimate.readInSteps(0, phaseResolution).standardUncertainty();
        return Math.sqrt(2) * one;
    }
}
