package halfwidth.localizer.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

/** How many series of cuts went, and whether any went too far. */
final class CutFigures {
    private final double smallestCut;
    private final Figures finished = new Figures();
    private final Figures cuts = new Figures();
    private final Figures passedMillimetres = new Figures();
    private final Figures passedUncertainties = new Figures();

    CutFigures(double smallestCut) {
        this.smallestCut = smallestCut;
    }

    /**
     * Adds a series.
     *
     * @param converged whether it came to an end by itself
     * @param netCuts before the first cut and after each (m)
     * @param whole the cut that would have been right, of the same sign (m)
     * @param uncertainty stated for what is left at the end (m)
     */
    void add(boolean converged, List<Double> netCuts, double whole, double uncertainty) {
        finished.add(converged ? 1 : 0);
        cuts.add(netCuts.size() - 1);
        double past = 0;
        for (double cut : netCuts) {
            past = Math.max(past, Math.signum(whole) * (cut - whole));
        }
        passedMillimetres.add(1000 * past);
        passedUncertainties.add(Math.max(0, past - smallestCut) / uncertainty);
    }

    /**
     * The first cut leaves a fifth, give or take the data sheet's 3 %; the second leaves the two
     * standard uncertainties kept in hand; a third at most what those were above the target. Two
     * standard uncertainties are passed by one normal error in 44, so a few series may end a little
     * beyond the null where the readings know it no better than the tool could cut.
     */
    void printAndCheck(String what) {
        long beyond = passedUncertainties.count(p -> p > 0);
        System.out.printf(
                Locale.ROOT,
                "  %-34s n %4d  converged %5.1f %%  cuts: median %.0f, 95 %% %.0f, most %.0f;"
                        + " past the null by more than the smallest cut: %d (most %.2f mm)%n",
                what,
                finished.number(),
                100 * finished.share(f -> f == 1),
                cuts.percentile(50),
                cuts.percentile(95),
                cuts.greatest(),
                beyond,
                passedMillimetres.greatest());
        assertEquals(1, finished.share(f -> f == 1), what + " converged");
        assertTrue(cuts.percentile(50) <= 2 && cuts.percentile(95) <= 3, what + " cuts");
        assertTrue(beyond <= cuts.number() / 44.0, what + " past the null");
        assertTrue(passedUncertainties.greatest() <= 3, what + " far past the null");
    }
}
