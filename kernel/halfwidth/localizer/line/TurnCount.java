package halfwidth.localizer.line;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;

/**
 * How many whole turns lie in a line whose phase is known modulo a turn.
 *
 * @param remainder the electrical length less its whole turns (deg), 0 to below {@code ambiguity}
 * @param ambiguity the electrical length of one turn of the reading (deg): 360 through, 180
 *     one-port
 * @param coarse the whole electrical length as the slope tells it, with the standard uncertainty of
 *     slope and reading together (deg)
 * @param coverageFactor how many standard uncertainties must fit within half a turn (1)
 */
public record TurnCount(
        double remainder, double ambiguity, Estimate coarse, double coverageFactor) {

    /**
     * Returns the whole turns that agree best with the slope.
     *
     * @return the turns (1)
     */
    public long turns() {
        return Math.round((coarse.value() - remainder) / ambiguity);
    }

    /**
     * Returns the whole electrical length: as fine as the reading, if the turns can be told.
     *
     * @return the electrical length (deg)
     */
    public double electricalLength() {
        return turns() * ambiguity + remainder;
    }

    /**
     * Returns how far the slope is from the nearest length that the reading allows.
     *
     * @return the difference (deg), at most half of {@code ambiguity} in size
     */
    public double difference() {
        return coarse.value() - electricalLength();
    }

    /**
     * Returns every number of turns that the slope and the reading allow together.
     *
     * @return the turns within {@code coverageFactor} standard uncertainties (1), from the least;
     *     none if the two disagree
     */
    public List<Long> possibleTurns() {
        List<Long> possible = new ArrayList<>();
        double reach = coverageFactor * coarse.standardUncertainty();
        long first = (long) Math.ceil((coarse.value() - reach - remainder) / ambiguity);
        long last = (long) Math.floor((coarse.value() + reach - remainder) / ambiguity);
        for (long turns = first; turns <= last; turns++) {
            possible.add(turns);
        }
        return List.copyOf(possible);
    }

    /**
     * Tells whether exactly one number of turns is possible.
     *
     * <p>It cannot be told where the uncertainty reaches over several, which more or wider-spread
     * frequencies cure, nor where slope and reading agree on none: then something else than the
     * line was measured.
     *
     * @return true if the turns can be told
     */
    public boolean canBeTold() {
        return possibleTurns().size() == 1;
    }
}
