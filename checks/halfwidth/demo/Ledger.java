package halfwidth.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

/**
 * Results held against the truth. One in 370 is beyond three standard uncertainties by chance; with
 * the hundred or so that a season gives none may be.
 */
final class Ledger {
    private final List<Double> errors = new ArrayList<>();

    /** A result of a page is within three of its own stated uncertainties of the truth. */
    void hold(Visit visit, String result, double truth) {
        hold(visit, result, truth, visit.uncertainty(result));
    }

    void hold(Visit visit, String result, double truth, double uncertainty) {
        double found = visit.number(result);
        assertEquals(truth, found, 3 * uncertainty, visit.place() + ", " + result);
        errors.add(Math.abs(found - truth) / uncertainty);
    }

    /** 95 of 100 by the normal distribution; 85 where few results share the same few readings. */
    void assertHonest() {
        long within = errors.stream().filter(error -> error <= 2).count();
        String figures = within + " of " + errors.size() + " results within 2 u of the truth";
        System.out.println("Demo season: " + figures);
        assertTrue(within >= 0.85 * errors.size(), figures);
    }
}
