package halfwidth.demo;

import halfwidth.localizer.line.Line;
import halfwidth.localizer.station.Instruments.Precision;
import java.util.ArrayList;
import java.util.List;

/** The crew checks its receiver and finds what its lines are worth. */
record Measuring(Desk desk, Station station) {
    /** By the drawing; the feeds in the ground are of another line. */
    static final String FEED_DATA_SHEET = "0.67";

    static final double RECEIVER_GAIN = 1.017;
    static final double RECEIVER_ZERO = -0.0012;

    /** Of the dummy load (ohm). */
    static final double LOAD_RESISTANCE = 49.3;

    static final double LOAD_REACTANCE = 3.1;
    private static final double SPARE_LENGTH = 11.3;
    private static final Precision ANALYSER = new Precision(0.1, 0.1);
    private static final double[] SETTINGS = {-0.2, -0.155, -0.08, 0, 0.08, 0.155, 0.2};

    void measure() {
        receiver();
        dummyLoad();
        spare("feeds", FEED_DATA_SHEET, station.simulated().truth().lines().feedVelocityFactor());
        spare("returns", "0.84", station.simulated().truth().lines().returnVelocityFactor());
        desk.clear();
    }

    private void receiver() {
        List<List<String>> rows = new ArrayList<>();
        for (int round = 0; round < 3; round++) {
            for (double setting : SETTINGS) {
                double truth = RECEIVER_GAIN * setting + RECEIVER_ZERO;
                String reading = Typed.ddm(station.read(truth, Station.DDM));
                rows.add(List.of(Typed.ddm(setting), reading));
            }
        }
        desk.sheet("instruments/receiver-check")
                .set("displayStep", "1 ‰", "sourceZero", "0.0002", "sourceGain", "0.2")
                .set("allowed", "0.005", "fieldReading", "152 in the 150")
                .table("readings", "setting [DDM],reading [DDM]", rows)
                .run();
    }

    /** The source drifts, so that voltage and current move together. */
    private void dummyLoad() {
        double impedance = Math.hypot(LOAD_RESISTANCE, LOAD_REACTANCE);
        double lead = Math.atan2(LOAD_REACTANCE, LOAD_RESISTANCE);
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < 12; row++) {
            double volts = station.read(5, new Precision(0, 0.02));
            rows.add(
                    List.of(
                            Typed.number(station.read(volts, new Precision(0.001, 0.004)), 3),
                            Typed.number(
                                    station.read(
                                            1000 * volts / impedance, new Precision(0.01, 0.1)),
                                    2),
                            Typed.number(station.read(lead, new Precision(0.0001, 0.001)), 4)));
        }
        desk.sheet("instruments/load-impedance")
                .set("lineImpedance", "50")
                .table("readings", "voltage [V],current [mA],phase [rad]", rows)
                .run();
    }

    /** A spare piece from each reel: trial cuts, and the slope over frequency before them. */
    private void spare(String reel, String dataSheet, double velocityFactor) {
        Line line = new Line(velocityFactor, 108.75e6);
        List<List<String>> cuts = new ArrayList<>();
        for (int sixteenths : new int[] {0, 16, 40, 64, 96, 128}) {
            double left = SPARE_LENGTH - sixteenths * Station.TOOL;
            double phase = phase(line, left);
            cuts.add(List.of(Typed.number(sixteenths / 16.0, 4), Typed.number(phase, 1)));
        }
        List<List<String>> slope = new ArrayList<>();
        for (double megahertz = 100; megahertz <= 118; megahertz += 2) {
            double phase = phase(line.at(megahertz * 1e6), SPARE_LENGTH);
            slope.add(List.of(Surveying.plain(megahertz), Typed.number(phase, 1)));
        }
        desk.sheet("lines/phase-constant", reel)
                .set("frequency", Station.FREQUENCY)
                .set("velocityFactor", dataSheet, "velocityTolerance", "0.02")
                .set("cutMeasurement", "through", "cutPhaseStep", "0.1 °", "ruleStep", "1/16 in")
                .set("slopeMeasurement", "through", "slopePhaseStep", "0.1 °")
                .set("lineLength", Typed.number(SPARE_LENGTH, 2) + " m")
                .set("lengthUncertainty", "0.01 m")
                .table("cuts", "cut so far [in],phase [°]", cuts)
                .table("slope", "frequency [MHz],phase [°]", slope)
                .run();
    }

    private double phase(Line line, double length) {
        double truth = -line.phaseConstant() * length;
        return Math.IEEEremainder(station.read(truth, ANALYSER), 360);
    }
}
