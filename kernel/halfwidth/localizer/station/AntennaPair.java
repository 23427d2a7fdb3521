package halfwidth.localizer.station;

import halfwidth.localizer.signal.Tone;

/**
 * Two elements at the same distance from the array's centre.
 *
 * @param number of the pair (1), 1 for the innermost
 * @param element90 number of the element on the 90 Hz side (1), from 1
 * @param element150 number of the element on the 150 Hz side (1), from 1
 */
public record AntennaPair(int number, int element90, int element150) {

    /**
     * Returns the element of one side.
     *
     * @param side the side, by its tone
     * @return its number (1), from 1
     */
    public int element(Tone side) {
        return side == Tone.HZ_90 ? element90 : element150;
    }
}
