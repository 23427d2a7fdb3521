package halfwidth.localizer.sweep;

import halfwidth.localizer.signal.Tone;
import java.util.Optional;

/**
 * The least clearance in one sector on one side.
 *
 * @param sector the sector
 * @param side the side
 * @param lowest the judged reading with the least DDM of its side, empty if none was judged
 * @param missing how many readings are missing there (1): what a verdict of met leaves open
 * @param verdict met, not met, or not judged where nothing could be
 */
public record ClearanceMinimum(
        ClearanceSector sector,
        Tone side,
        Optional<SweepReading> lowest,
        int missing,
        Verdict verdict) {

    /**
     * Returns the least clearance by size, negative where the wrong tone predominates.
     *
     * @return the clearance (DDM), empty if none was judged
     */
    public Optional<Double> clearance() {
        return lowest.map(reading -> reading.value() * side.sign());
    }
}
