package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * The control of a transmitter that sets its SBO level.
 *
 * @param scale what its numbers stand for
 * @param step what one step of it changes the number by (unit of the scale), above 0
 * @param range the least and the most it can be set to (unit of the scale)
 */
public record SboControl(SettingScale scale, double step, Range range) {

    /**
     * @throws IllegalArgumentException if the step is not above 0, an end of the range is not
     *     finite, or no whole step lies in the range
     */
    public SboControl {
        Require.above("step of the control", step, 0, "");
        Require.finite("least setting", range.least(), "");
        Require.finite("greatest setting", range.most(), "");
        if (Math.ceil(range.least() / step) > Math.floor(range.most() / step)) {
            throw new IllegalArgumentException(
                    "control from "
                            + range.least()
                            + " to "
                            + range.most()
                            + " must hold a whole step of "
                            + step);
        }
    }

    /** Nearest multiple of the step that the control reaches. */
    double nearest(double setting) {
        double steps = Math.rint(setting / step);
        double least = Math.ceil(range.least() / step);
        double most = Math.floor(range.most() / step);
        return step * Math.max(least, Math.min(most, steps));
    }
}
