package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.tone;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The offset to dial in takes the phase error off. A piece that delays by p in the SBO path leaves
 * D cos(ε − p) of the deflection D, in the CSB path D cos(ε + p); the place adds ψ to ε.
 */
@Tag("long")
class QuadraturePhasingUnderFireTest {
    /** No centring is as large (common practice, no source). */
    private static final double MOST_CENTRING = 0.020;

    private static final double ROUNDING = 1e-6;

    private final Fire fire = Fire.at("transmit/quadrature-phasing");

    @Test
    void dialsTowardsInPhase() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), QuadraturePhasingUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double step = any(random, 0.001, 0.001, 0.0005);
        String path = any(random, "SBO", "CSB");
        double piece = uniform(random, 85, 95);
        boolean inPhase = random.nextInt(3) == 0;
        double[] lead = {uniform(random, -8, 8), uniform(random, -3, 3)};
        List<List<String>> rows = new ArrayList<>();
        for (int transmitter = 1; transmitter <= 1 + random.nextInt(2); transmitter++) {
            for (int carrier = 0; carrier < 1 + random.nextInt(2); carrier++) {
                double centring = uniform(random, -0.008, 0.008);
                double deflection = uniform(random, carrier == 0 ? 0.12 : 0.18, 0.3);
                double wanted = uniform(random, -40, 40);
                for (int i = 0; i < 1 + random.nextInt(2); i++) {
                    double error = uniform(random, -30, 30) / (i * i + 1);
                    double there = error + lead[carrier];
                    double with =
                            deflection * cos(path.equals("SBO") ? there - piece : there + piece);
                    double without = inPhase ? deflection : deflection * cos(there);
                    rows.add(
                            row(
                                    "" + transmitter,
                                    carrier == 0 ? "course" : "clearance",
                                    random.nextInt(10) == 0 ? "" : number(wanted + error, 1),
                                    tone(with + centring, step),
                                    tone(-with + centring, step),
                                    tone(without + centring, step),
                                    tone(-without + centring, step)));
                }
            }
        }
        return Filled.none(fire.page())
                .with("ddmStep", number(1000 * step, 4) + " ‰")
                .with("path", path)
                .with("pieceLength", number(piece, 1))
                .with("pieceUncertainty", "0.5")
                .with("withoutPiece", inPhase ? "with sidebands in phase" : "at the offset now set")
                .with("leadThereCourse", number(lead[0], 1))
                .with("leadThereClearance", number(lead[1], 1))
                .with("offsetStep", any(random, "0.5", "1", "0.1"))
                .with("frequency", "110.30 MHz")
                .with("velocityFactor", "0.83")
                .with("velocityFactorUncertainty", "0.02")
                .withReadings("phasing", Rows.withMishaps(rows, random));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static String objection(Decided decided) {
        for (String carrier : new String[] {"course", "clearance"}) {
            for (String transmitter : new String[] {"1", "2"}) {
                String capital = carrier.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
                String name = capital + carrier.substring(1) + transmitter;
                Optional<Action> action = decided.action("advice" + name);
                boolean decides =
                        action.isPresent()
                                && (action.get().hasAmount()
                                        || action.get().state() == Action.State.FINISHED);
                String wrong =
                        decides ? objection(decided, carrier, transmitter, action.get()) : "";
                if (!wrong.isEmpty()) {
                    return name + ": " + wrong + ", yet: " + action.get();
                }
            }
        }
        return "";
    }

    private static String objection(
            Decided decided, String carrier, String transmitter, Action action) {
        Rows rows = Rows.of(decided.filled(), "phasing");
        int last = -1;
        for (int row = 0; row < rows.rows(); row++) {
            boolean its =
                    rows.word(row, "transmitter").equals(transmitter)
                            && rows.word(row, "carrier").equals(carrier);
            last = its ? row : last;
        }
        double with150 = rows.number(last, "150 side with piece");
        double with90 = rows.number(last, "90 side with piece");
        double without150 = rows.number(last, "150 side without");
        double without90 = rows.number(last, "90 side without");
        double q = (with150 - with90) / 2;
        double d = (without150 - without90) / 2;
        if (Double.isNaN(q + d)) {
            return "a reading is blank";
        }
        if (Math.abs(with150 + with90) / 2 > MOST_CENTRING + ROUNDING) {
            return "no centring explains the readings with the piece";
        }
        if (without150 < -MOST_CENTRING || without90 > MOST_CENTRING) {
            return "a side reads the other tone without the piece";
        }
        double error = phaseError(decided, q, d, carrier);
        double step = field(decided, "offsetStep");
        if (!action.hasAmount()) {
            return Math.abs(error) <= step / 2 + ROUNDING ? "" : "the error is " + error;
        }
        double to = rows.number(last, "offset set") - error;
        double off = Math.IEEEremainder(action.amount() - to, 360);
        return Math.abs(off) <= step / 2 + 0.001 ? "" : "the offset should be " + to;
    }

    /** By the law of cosines of the two readings, or by the arc cosine where D is known. */
    private static double phaseError(Decided decided, double q, double d, String carrier) {
        double piece = field(decided, "pieceLength");
        boolean sbo = decided.filled().entries().get("path").value().equals("SBO");
        boolean inPhase =
                decided.filled()
                        .entries()
                        .get("withoutPiece")
                        .value()
                        .equals("with sidebands in phase");
        double lag;
        if (inPhase) {
            lag = piece - Math.toDegrees(Math.acos(q / d));
        } else {
            double sine = q / d - cos(piece);
            lag = Math.toDegrees(Math.atan2(sine, Math.sin(Math.toRadians(piece))));
        }
        double there =
                field(decided, carrier.equals("course") ? "leadThereCourse" : "leadThereClearance");
        return (sbo ? lag : -lag) - there;
    }
}
