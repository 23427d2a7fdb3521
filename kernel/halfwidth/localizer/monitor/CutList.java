package halfwidth.localizer.monitor;

import java.util.List;

/**
 * The cuts that bring the returns of one side to the length of the shortest.
 *
 * @param side the side of the array
 * @param cuts one for each line, from the shortest line, which is not cut, to the longest
 * @param turnsKnown how it is known that no line is a whole turn longer than its phase says
 * @param warnings what to check before cutting, in words; may be empty
 */
public record CutList(
        ArraySide side, List<LineCut> cuts, TurnsKnown turnsKnown, List<String> warnings) {

    /** Keeps copies of the lists. */
    public CutList {
        cuts = List.copyOf(cuts);
        warnings = List.copyOf(warnings);
    }

    /**
     * Returns the line that the others are cut to.
     *
     * @return its name
     */
    public String shortest() {
        return cuts.get(0).name();
    }

    /**
     * Returns how far apart the lines will be after the cuts: greatest less least residual.
     *
     * @return the spread (deg), from rounding to the tool's steps; each {@link LineCut#residual}
     *     has the uncertainty of the measurement besides
     */
    public double residualSpread() {
        double least = cuts.stream().mapToDouble(c -> c.residual().value()).min().orElseThrow();
        double most = cuts.stream().mapToDouble(c -> c.residual().value()).max().orElseThrow();
        return most - least;
    }
}
