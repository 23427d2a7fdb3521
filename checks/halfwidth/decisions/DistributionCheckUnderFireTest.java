package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Filled;
import halfwidth.show.Verdict;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A cable is cut only where CSB and SBO both lag behind what the other elements show, by more than
 * the station allows and less than a quarter turn, and by no more than the lag is worth.
 */
@Tag("long")
class DistributionCheckUnderFireTest {
    /** Step of a phase, and what the zero of the phases may differ by from one way to another. */
    private static final double DOUBT = 2;

    /** Beyond it a lag may as well be a lead, or a line turned over. */
    private static final double QUARTER = 90;

    private static final double LIGHT = 299792458;

    private final Fire fire = Fire.at("array/distribution-check");

    @Test
    void cutsOnlyACableThatLags() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), DistributionCheckUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        Filled empty =
                Filled.none(fire.page())
                        .with("arrayFile", any(random, "fourteen-two-carrier", "ten-one-carrier"))
                        .with("measuredCarrier", random.nextInt(8) == 0 ? "clearance" : "course")
                        .with("velocityFactor", "0.83")
                        .with("velocityFactorUncertainty", "0.02")
                        .with("phaseStep", "0.5")
                        .with("phaseAllowed", any(random, "3", "5"))
                        .with("levelAllowed", "0.5")
                        .with("firstFraction", any(random, "0.8", "1"))
                        .with("datumDistance", "3060")
                        .with("category", any(random, "I", "II", "III"));
        Carrier design = design(empty);
        int elements = design.csb().size();
        double spread = any(random, 0.2, 1.0, 2.0);
        int faulty = random.nextInt(elements);
        int fault = random.nextInt(7);
        double lag = uniform(random, 4, 60);
        double[] zero = {uniform(random, -180, 180), uniform(random, -180, 180)};
        double scale = uniform(random, 0.3, 1.5);
        List<List<String>> rows = new ArrayList<>();
        for (int n = 0; n < elements; n++) {
            boolean here = n == faulty;
            double cable = spread * random.nextGaussian();
            cable +=
                    !here
                            ? 0
                            : fault == 0 || fault == 1
                                    ? -lag
                                    : fault == 2 ? lag : fault == 3 ? 180 : 0;
            double unit = spread / 2 * random.nextGaussian() + (here && fault == 4 ? lag : 0);
            double level = scale * (1 + 0.02 * random.nextGaussian());
            level *= here && fault == 5 ? 0.001 : 1;
            Current csb = design.csb().get(n);
            Current sbo = design.sbo().get(n);
            rows.add(
                    row(
                            "" + (n + 1),
                            number(level * csb.amplitude(), 4),
                            phase(csb.phase() + cable + zero[0]),
                            number(level * sbo.amplitude(), 4),
                            phase(sbo.phase() + cable + unit + zero[1])));
        }
        return empty.withReadings("measured", Rows.withMishaps(rows, random));
    }

    private static Carrier design(Filled filled) {
        NamedArray array = (NamedArray) filled.entries().get("arrayFile").value();
        List<Carrier> carriers = array.model().carriers();
        boolean clearance = filled.entries().get("measuredCarrier").value().equals("clearance");
        return carriers.get(clearance ? carriers.size() - 1 : 0);
    }

    private static String phase(double degrees) {
        return number(Math.rint(2 * Math.IEEEremainder(degrees, 360)) / 2, 1);
    }

    private static String objection(Decided decided) {
        Action action = decided.action("advice").orElse(null);
        boolean decides =
                action != null && (action.hasAmount() || action.state() == Action.State.FINISHED);
        if (!decides) {
            return "";
        }
        boolean broken =
                decided.answers().stream().anyMatch(answer -> answer.verdict() == Verdict.NOT_MET);
        if (!action.hasAmount() && broken) {
            return "a limit is not met, yet: " + action;
        }
        Carrier design = design(decided.filled());
        double[] csb = off(decided, "CSB", design.csb());
        double[] sbo = off(decided, "SBO", design.sbo());
        if (csb == null || sbo == null) {
            return "";
        }
        String wrong =
                action.hasAmount()
                        ? cut(decided, action, csb, sbo, design)
                        : finished(decided, design, csb, sbo);
        return wrong.isEmpty() ? "" : wrong + ", yet: " + action;
    }

    private static String cut(
            Decided decided, Action action, double[] csb, double[] sbo, Carrier design) {
        int n = Integer.parseInt(action.on().replaceAll("\\D", "")) - 1;
        double unit = Math.IEEEremainder(sbo[n] - csb[n], 360);
        double cable = Double.isNaN(unit) ? csb[n] : Math.IEEEremainder(csb[n] + unit / 2, 360);
        cable = Double.isNaN(cable) ? sbo[n] : cable;
        double allowed = field(decided, "phaseAllowed");
        if (!(cable < -allowed + DOUBT) || cable < -QUARTER - DOUBT) {
            return "the cable is off by " + cable + "°";
        }
        if (Math.abs(unit) > allowed + DOUBT) {
            return "the unit is off by " + unit + "°";
        }
        double perMillimetre =
                0.360 * design.frequency() / (LIGHT * field(decided, "velocityFactor"));
        double most = (-cable + DOUBT) / perMillimetre;
        return action.amount() <= most ? "" : "no more than " + most + " mm is too long";
    }

    private static String finished(Decided decided, Carrier design, double[] csb, double[] sbo) {
        double allowed = field(decided, "phaseAllowed") + DOUBT;
        for (int n = 0; n < csb.length; n++) {
            boolean blank =
                    Double.isNaN(csb[n]) && design.csb().get(n).amplitude() > 0
                            || Double.isNaN(sbo[n]) && design.sbo().get(n).amplitude() > 0;
            if (blank) {
                return "element " + (n + 1) + " was not read or is dead";
            }
            double unit = Math.IEEEremainder(sbo[n] - csb[n], 360);
            if (Math.abs(csb[n]) > allowed && Math.abs(sbo[n]) > allowed
                    || Math.abs(unit) > allowed + DOUBT) {
                return "element " + (n + 1) + " is off by " + csb[n] + "° and " + sbo[n] + "°";
            }
        }
        return "";
    }

    /**
     * How far each phase is ahead of what the others show: the zero is that reading to which the
     * distances round the circle sum up least. NaN where it was not read, or the element gives less
     * than a tenth; null where fewer than two thirds lie together, so that there is no zero.
     */
    private static double[] off(Decided decided, String signal, List<Current> design) {
        Rows rows = Rows.of(decided.filled(), "measured");
        double[] ahead = new double[design.size()];
        double[] level = new double[design.size()];
        Arrays.fill(ahead, Double.NaN);
        Arrays.fill(level, Double.NaN);
        for (int i = 0; i < rows.rows(); i++) {
            double element = rows.number(i, "element");
            if (!Double.isNaN(element) && element >= 1 && element <= design.size()) {
                int n = (int) element - 1;
                if (design.get(n).amplitude() > 0) {
                    ahead[n] = rows.number(i, signal + " phase") - design.get(n).phase();
                    level[n] = rows.number(i, signal) / design.get(n).amplitude();
                }
            }
        }
        double[] levels = Arrays.stream(level).filter(one -> !Double.isNaN(one)).sorted().toArray();
        for (int n = 0; n < ahead.length; n++) {
            boolean alive = levels.length > 0 && level[n] > 0.1 * levels[levels.length / 2];
            ahead[n] = alive ? ahead[n] : Double.NaN;
        }
        double[] known = Arrays.stream(ahead).filter(one -> !Double.isNaN(one)).toArray();
        double zero = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double candidate : known) {
            double sum = Arrays.stream(known).map(one -> distance(one, candidate)).sum();
            zero = sum < least ? candidate : zero;
            least = Math.min(sum, least);
        }
        double at = zero;
        long together = Arrays.stream(known).filter(one -> distance(one, at) < 6).count();
        return 3 * together < 2 * known.length || known.length < 3
                ? null
                : Arrays.stream(ahead).map(one -> Math.IEEEremainder(one - at, 360)).toArray();
    }

    private static double distance(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 360));
    }
}
