package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.tone;
import static halfwidth.decisions.Rows.uniform;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.show.Verdict;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A sideband control and two points at which its deflection is read: what the pages of the course
 * width and of the clearance width share. Deflection goes with the amplitude; a scale of power
 * counts its square, one in decibels 20 times its logarithm.
 */
final class WidthSetting {
    private static final double ROUNDING = 1e-9;

    /** No centring is as large, and no reading is so far in the other tone (pages' prose). */
    private static final double MOST_CENTRING = 0.020;

    private WidthSetting() {}

    private record Control(String scale, double step, double least, double most, double usual) {
        double amplitude(double from, double to) {
            return switch (scale) {
                case "W", "% of power" -> Math.sqrt(to / from);
                case "dB of level" -> Math.pow(10, (to - from) / 20);
                case "dB of attenuation" -> Math.pow(10, (from - to) / 20);
                default -> to / from;
            };
        }
    }

    private static final Control[] CONTROLS = {
        new Control("W", 0.05, 0.5, 5, 2.5),
        new Control("W", 0.01, 0.1, 3, 0.5),
        new Control("W", 1, 1, 10, 2),
        new Control("% of power", 1, 5, 100, 40),
        new Control("% of amplitude", 0.5, 5, 100, 50),
        new Control("relative amplitude", 0.01, 0.2, 1, 0.5),
        new Control("dB of level", 0.1, -20, 3, -8),
        new Control("dB of attenuation", 0.5, 0, 25, 9)
    };

    /** One to three settings of one transmitter or both, and what they read. */
    static Filled draw(Page page, Random random, double target) {
        Control control = any(random, CONTROLS);
        double step = any(random, 0.001, 0.001, 0.0005, 0.002);
        List<List<String>> rows = new ArrayList<>();
        int transmitters = 1 + random.nextInt(2);
        for (int transmitter = 1; transmitter <= transmitters; transmitter++) {
            double centring = uniform(random, -0.008, 0.008);
            double lopsided = uniform(random, -0.006, 0.006);
            // the setting that would be right lies beyond the control now and then
            double right = control.usual + uniform(random, -0.6, 0.9) * Math.abs(control.usual);
            int settings = 1 + random.nextInt(3);
            for (int i = 0; i < settings; i++) {
                double off = uniform(random, -0.25, 0.25) / (i + 1);
                double set = control.step * Math.rint(right * (1 + off) / control.step);
                double inRange = Math.max(control.least, Math.min(control.most, set));
                double d = target * control.amplitude(right, inRange);
                rows.add(
                        row(
                                "" + transmitter,
                                number(inRange, 4),
                                tone(d + centring + lopsided, step),
                                tone(-d + centring + lopsided, step),
                                random.nextBoolean() ? tone(centring, step) : ""));
            }
        }
        Filled filled =
                Filled.none(page)
                        .with("scale", random.nextInt(12) == 0 ? "W" : control.scale)
                        .with("controlStep", number(control.step, 4))
                        .with("controlLeast", number(control.least, 4))
                        .with("controlMost", number(control.most, 4))
                        .with("ddmStep", number(1000 * step, 4) + " ‰")
                        .with("nearOverFar", any(random, "1", "1", "0.97", "1.04"));
        return filled.withReadings("widths", Rows.withMishaps(rows, random));
    }

    /** What is wrong with what the page says of either transmitter; "" if nothing. */
    static String objection(Decided decided, double target) {
        for (String transmitter : new String[] {"1", "2"}) {
            String wrong = objection(decided, target, transmitter);
            if (!wrong.isEmpty()) {
                return "TX " + transmitter + ": " + wrong;
            }
        }
        return "";
    }

    private static String objection(Decided decided, double target, String transmitter) {
        Optional<Action> said = decided.action("advice" + transmitter);
        if (said.isEmpty()) {
            return "";
        }
        Action action = said.get();
        Rows rows = Rows.of(decided.filled(), "widths");
        int now = rows.last("transmitter", transmitter);
        double set = rows.number(now, "setting");
        double r150 = rows.number(now, "150 side");
        double r90 = rows.number(now, "90 side");
        double d = (r150 - r90) / 2;
        boolean decides = action.hasAmount() || action.state() == Action.State.FINISHED;
        if (!decides) {
            return "";
        }
        if (Double.isNaN(d + set)) {
            return "decides on a row with a blank: " + action;
        }
        if (r150 < -MOST_CENTRING || r90 > MOST_CENTRING) {
            return "decides on a reading in the other tone: " + action;
        }
        if (Math.abs(r150 + r90) / 2 > MOST_CENTRING + ROUNDING) {
            return "decides on sides that no centring explains: " + action;
        }
        Control control =
                new Control(
                        (String) decided.filled().entries().get("scale").value(),
                        field(decided, "controlStep"),
                        field(decided, "controlLeast"),
                        field(decided, "controlMost"),
                        0);
        if (set < control.least - ROUNDING || set > control.most + ROUNDING) {
            return "the control has no setting " + set + ", yet: " + action;
        }
        double resolution = field(decided, "ddmStep");
        for (int row = 0; row < now; row++) {
            double before = (rows.number(row, "150 side") - rows.number(row, "90 side")) / 2;
            double ratio = control.amplitude(rows.number(row, "setting"), set);
            double apart = Math.abs(before * ratio - d) - resolution / 2 * (1 + ratio);
            if (rows.word(row, "transmitter").equals(transmitter) && apart > ROUNDING) {
                return "row " + (row + 1) + " does not follow the scale, yet: " + action;
            }
        }
        return action.hasAmount()
                ? setting(control, set, action.amount(), d, target, resolution)
                : finished(decided, transmitter, action);
    }

    private static String setting(
            Control control, double set, double to, double d, double target, double resolution) {
        if (to < control.least - ROUNDING || to > control.most + ROUNDING) {
            return "the control does not reach " + to;
        }
        if (Math.abs(to / control.step - Math.rint(to / control.step)) > 1e-6) {
            return to + " is no step of the control";
        }
        double then = d * control.amplitude(set, to);
        if ((then - d) * (target - d) <= 0) {
            return "setting " + to + " moves " + d + " away from " + target;
        }
        if (Math.abs(then - d) < resolution - ROUNDING) {
            return "the receiver does not tell " + to + " from " + set;
        }
        double up = d * control.amplitude(set, to + control.step);
        double down =
                to - control.step > 0 || control.scale.startsWith("dB")
                        ? d * control.amplitude(set, to - control.step)
                        : d;
        double coarse = Math.max(Math.abs(up - then), Math.abs(then - down));
        return Math.abs(then - target) <= coarse ? "" : "a step nearer than " + to + " is left";
    }

    private static String finished(Decided decided, String transmitter, Action action) {
        boolean broken =
                decided.answers().stream()
                        .filter(answer -> answer.result().name().endsWith(transmitter))
                        .anyMatch(answer -> answer.verdict() == Verdict.NOT_MET);
        return broken ? "a limit is not met, yet: " + action : "";
    }
}
