package halfwidth.localizer.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class HistoryTest {

    /**
     * Flow of the Nile at Aswan, 1871 to 1970 (10⁸ m³): G. W. Cobb, Biometrika 65 (1978) 243, which
     * dates the change to 1898/99. From memory; their mean, 919.35, is published with them and
     * checked below.
     */
    private static final int[] NILE = {
        1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960,
        1180, 799, 958, 1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694,
        940, 833, 701, 916, 692, 1020, 1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764,
        821, 768, 845, 864, 862, 698, 845, 744, 796, 1040, 759, 781, 865, 845, 944, 984, 897, 822,
        1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890, 744, 749, 838, 1050, 918,
        986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740
    };

    private static History yearly(int first, double... values) {
        List<Dated> dated = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            dated.add(new Dated(LocalDate.of(first + i, 1, 1), values[i]));
        }
        return new History(dated);
    }

    private static History nile() {
        return yearly(1871, Arrays.stream(NILE).asDoubleStream().toArray());
    }

    @Test
    void findsTheChangeOfTheNile() {
        assertEquals(919.35, Arrays.stream(NILE).average().orElseThrow(), 1e-9);

        StepChange step = nile().likeliestStep();

        assertEquals(1898, step.lastBefore().getYear());
        assertEquals(1899, step.firstAfter().getYear());
        assertTrue(step.size() < 0);
        assertTrue(step.chance() < 0.001);
    }

    @Test
    void countsThePettittSumsByTheirDefinition() {
        double[] values = {3, 1, 4, 1.5, 9, 2.6, 5, 8};
        long greatest = 0;
        for (int split = 1; split < values.length; split++) {
            long sum = 0;
            for (int i = 0; i < split; i++) {
                for (int j = split; j < values.length; j++) {
                    sum += (long) Math.signum(values[i] - values[j]);
                }
            }
            greatest = Math.max(greatest, Math.abs(sum));
        }

        assertEquals(greatest, yearly(2000, values).likeliestStep().statistic());
    }

    @Test
    void givesTheExampleOfSen() {
        // P. K. Sen (1968), section 6 (from memory): at 1, 2, 3, 4, 10, 12, 18 the values 9, 15,
        // 19, 20, 45, 55, 78 have a median slope of 4. Days stand for the unit here.
        int[] at = {1, 2, 3, 4, 10, 12, 18};
        double[] values = {9, 15, 19, 20, 45, 55, 78};
        List<Dated> dated = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            dated.add(new Dated(LocalDate.of(2020, 1, 1).plusDays(at[i]), values[i]));
        }

        Trend trend = new History(dated).trend();

        assertEquals(4 * 365.2425, trend.slope(), 1e-9);
        assertTrue(trend.isDrift());
        assertTrue(trend.slopeInterval().contains(4 * 365.2425));
    }

    @Law
    void isNotMovedByOneStrayValue(Draw draw) {
        double stray = draw.between(-1000, 1000);
        double[] values = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11};
        values[5] = stray;

        // Of 66 slopes at most 11 come from the stray value; leap days move the rest a little.
        assertEquals(1, yearly(2000, values).trend().slope(), 0.003);
    }

    @Test
    void saysWhenALimitWouldBeReached() {
        History history = yearly(2015, 0, 1.1, 1.9, 3, 4.1, 4.9, 6, 7.1, 8, 9);
        Trend trend = history.trend();
        LocalDate last = LocalDate.of(2024, 1, 1);

        // One a year from 9 in 2024: 15 six years later, give or take half a year.
        LocalDate reached = trend.reaches(15, last).orElseThrow();
        assertTrue(
                reached.isAfter(LocalDate.of(2029, 6, 1))
                        && reached.isBefore(LocalDate.of(2030, 7, 1)),
                reached.toString());
        assertFalse(trend.reachesEarliest(15, last).orElseThrow().isAfter(reached));
        assertEquals(15, trend.at(reached), 0.01);
        assertTrue(trend.reaches(-5, last).isEmpty());
    }

    @Test
    void seesNoDriftInValuesThatOnlyScatter() {
        Trend level = yearly(2010, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1).trend();

        assertFalse(level.isDrift());
    }

    @Test
    void measuresAStepAtAKnownDate() {
        Estimate step = yearly(2010, 1, 2, 3, 11, 12, 13).stepAt(LocalDate.of(2013, 1, 1));

        // Means 2 and 12; each side has s = 1, so u = √(1/3 + 1/3).
        assertEquals(10, step.value(), 1e-12);
        assertEquals(Math.sqrt(2.0 / 3), step.standardUncertainty(), 1e-12);
    }

    @Test
    void agreesWithLeastSquaresOnAStraightLine() {
        History history = yearly(2001, 2, 4, 6, 8, 10);

        assertEquals(history.regression().slope().value(), history.trend().slope(), 0.005);
    }

    @Test
    void refusesTooFewValues() {
        assertThrows(IllegalArgumentException.class, () -> yearly(2000, 1, 2, 3));
        assertThrows(
                IllegalArgumentException.class,
                () -> yearly(2000, 1, 2, 3, 4).stepAt(LocalDate.of(2000, 6, 1)));
        assertThrows(IllegalArgumentException.class, () -> yearly(2000, 1, 2, 3, Double.NaN));
        Dated one = new Dated(LocalDate.of(2000, 1, 1), 1);
        assertThrows(
                IllegalArgumentException.class, () -> new History(List.of(one, one, one, one)));
    }
}
