package halfwidth.localizer.monitor;

import halfwidth.localizer.line.CutLength;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * What to cut from one return line.
 *
 * @param name what the crew calls the line
 * @param excess its electrical length beyond that of the shortest line of its side (deg)
 * @param length the excess as a length of line (m)
 * @param cut the length to cut, rounded down to a whole number of the tool's steps (m)
 * @param residual the electrical length left over after the cut (deg)
 */
public record LineCut(
        String name, Estimate excess, Estimate length, double cut, Estimate residual) {
    /**
     * Returns the cut in millimetres.
     *
     * @return the length to cut (mm)
     */
    public double cutMillimetres() {
        return 1000 * cut;
    }

    /**
     * Returns the cut in inches.
     *
     * @return the length to cut (in)
     */
    public double cutInches() {
        return new CutLength(cut).inches();
    }
}
