package halfwidth.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Place;
import halfwidth.localizer.line.Line;
import halfwidth.localizer.site.Mark;
import halfwidth.localizer.station.AntennaPair;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Transmitter;
import halfwidth.localizer.station.Truth;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What each page found of the demo station, held against what the station hides. */
abstract class Truths {
    private static final Ledger LEDGER = new Ledger();
    private static final Season SEASON = Demo.season();
    private static final Field FIELD = new Field(SEASON);
    private static final Truth TRUTH = SEASON.station().simulated().truth();

    @AfterAll
    static void uncertaintiesAreHonest() {
        LEDGER.assertHonest();
    }

    /** Annex 10 Vol I, 3.1.3.7.1: 0.00145 DDM for a metre at the reference datum. */
    @Test
    void courseGeometry() {
        double distance = Surveying.RUNWAY + Surveying.SETBACK;
        Visit page = Demo.visit("site/course-geometry");
        double half = Math.toDegrees(Math.atan(0.155 / 0.00145 / distance));
        assertEquals(2 * half, page.number("courseWidth"), 1e-9);
        assertEquals(distance, page.number("arrayToThreshold"), 1e-9);
        assertEquals(0.00145, page.number("ddmPerMetre"), 1e-9);
    }

    @Test
    void checkPointsAndLostMarks() {
        Visit page = Demo.visit("site/check-points");
        double half = Math.toRadians(Demo.visit("site/course-geometry").number("halfWidth"));
        // Typed with four decimals of a degree, at 300 m half of one of them is 0.3 mm.
        assertEquals(300 * Math.sin(half), page.number("halfWidthOffset"), 0.0003);
        for (Place lost : TRUTH.lostMarks()) {
            Mark there = Surveying.mark(lost);
            Visit found =
                    Demo.visit("site/lost-mark/mark-" + Surveying.name(lost).replace(' ', '-'));
            LEDGER.hold(found, "likelyAlong", there.along());
            LEDGER.hold(found, "likelyOffset", there.offset());
            // The list says where it should be; found within what two tapes allow.
            assertEquals(0, found.number("likelyMiss"), found.number("likelyRadius"));
        }
    }

    @Test
    void receiver() {
        Visit page = Demo.visit("instruments/receiver-check");
        LEDGER.hold(page, "gainError", 100 * (Measuring.RECEIVER_GAIN - 1));
        LEDGER.hold(page, "zeroError", Measuring.RECEIVER_ZERO);
        double field = (0.152 - Measuring.RECEIVER_ZERO) / Measuring.RECEIVER_GAIN;
        LEDGER.hold(page, "corrected", field);
    }

    @Test
    void dummyLoad() {
        Visit page = Demo.visit("instruments/load-impedance");
        LEDGER.hold(page, "resistance", Measuring.LOAD_RESISTANCE);
        LEDGER.hold(page, "reactance", Measuring.LOAD_REACTANCE);
    }

    @Test
    void phaseConstants() {
        holdConstant("feeds", TRUTH.lines().feedVelocityFactor());
        holdConstant("returns", TRUTH.lines().returnVelocityFactor());
    }

    private static void holdConstant(String reel, double factor) {
        Visit page = Demo.visit("lines/phase-constant/" + reel);
        double perInch = new Line(factor, 108.75e6).phaseConstant() * Station.METRES_PER_INCH;
        LEDGER.hold(page, "trialPerInch", perInch);
        LEDGER.hold(page, "slopePerInch", perInch);
        LEDGER.hold(page, "bestPerInch", perInch);
    }

    @Test
    void modulation() {
        Visit page = Demo.visit("transmit/modulation");
        for (Channel channel : Channel.values()) {
            for (Transmitter transmitter : Transmitter.values()) {
                double balance = TRUTH.signal(transmitter, channel).balance();
                String which =
                        (channel == Channel.COURSE ? "Course" : "Clearance")
                                + Station.number(transmitter);
                LEDGER.hold(page, "balance" + which, balance);
                // The page knows the receiver's step only, the receiver is noisy besides.
                double u = Math.hypot(page.uncertainty("depth90" + which), Setting.NOISE);
                LEDGER.hold(page, "depth90" + which, Setting.DEPTH - 50 * balance, u);
                LEDGER.hold(page, "depth150" + which, Setting.DEPTH + 50 * balance, u);
            }
        }
    }

    @Test
    void phasesAndFeeds() {
        Visit phasing = Demo.last("transmit/quadrature-phasing/");
        for (Channel channel : Channel.values()) {
            String name = channel == Channel.COURSE ? "Course" : "Clearance";
            for (Transmitter transmitter : Transmitter.values()) {
                double needed = FIELD.offsetNeeded(channel, transmitter);
                LEDGER.hold(phasing, "offset" + name + Station.number(transmitter), needed);
            }
            Visit trim = Demo.last("transmit/feed-trim/" + Station.word(channel));
            LEDGER.hold(trim, "degreesPerInch", FIELD.degreesPerInch(channel));
            double one = FIELD.offsetNeeded(channel, Transmitter.ONE);
            double two = FIELD.offsetNeeded(channel, Transmitter.TWO);
            // Two offsets set in steps of 0.5 deg and phased to about 0.3 deg.
            assertEquals(Math.abs(one - two) / 2, trim.number("halfSpread"), 0.6);
        }
    }

    @Test
    void widths() {
        double half = Demo.visit("site/course-geometry").number("halfWidth");
        Visit course = Demo.last("transmit/course-width/");
        Visit clearance = Demo.last("transmit/clearance-width/");
        for (Transmitter transmitter : Transmitter.values()) {
            String number = Station.number(transmitter);
            // The clearance was as found while the course was set.
            ArrayModel asSet = FIELD.fed(transmitter, courseSetting(transmitter), 1);
            double both = asSet.farField(half).ddm() - asSet.farField(-half).ddm();
            LEDGER.hold(course, "combined" + number, both);
            ArrayModel alone = FIELD.fed(transmitter, 1, clearanceSetting(transmitter));
            double deflection =
                    alone.farField(10).clearance().orElseThrow().ddm()
                            - alone.farField(-10).clearance().orElseThrow().ddm();
            LEDGER.hold(clearance, "combined" + number, deflection);
        }
    }

    /** Amplitude that the course is set to, before the drift (1). */
    private static double courseSetting(Transmitter transmitter) {
        double drifted = Sweeping.left(Sweeping.date(Sweeping.CHECKS));
        return SEASON.station().amplitude(transmitter, Channel.COURSE)
                / (transmitter == Transmitter.ONE ? drifted : 1);
    }

    private static double clearanceSetting(Transmitter transmitter) {
        return SEASON.station().amplitude(transmitter, Channel.CLEARANCE);
    }

    /**
     * Worked outside with NumPy and SciPy from the array's file: the sums of all currents, the
     * detector's weights by SciPy's ellipe and a central difference, brentq.
     */
    @Test
    void predictionAndFault() {
        Visit page = Demo.visit("array/prediction");
        assertEquals(1.98341, page.number("halfWidth150"), 5e-5);
        assertEquals(1.98341, page.number("halfWidth90"), 5e-5);
        assertEquals(0.24399, page.number("outer150"), 2e-5);
        assertEquals(0.15631, page.number("ddmThere"), 5e-6);
        Visit study = Demo.visit("array/tolerance-study");
        assertEquals(-5.5466, study.number("faultShift"), 0.002);
        assertEquals(-0.092, study.number("faultWidth"), 0.002);
    }

    @Test
    void distribution() {
        Visit page = Demo.visit("array/distribution-check");
        double beta = new Line(0.84, 108.754e6).phaseConstant();
        LEDGER.hold(page, "wholeCut", 1000 * Arraying.TOO_LONG / beta);
    }

    @Test
    void sweeps() {
        holdWidths(Sweeping.COMMISSIONED);
        for (int check = 1; check <= Sweeping.CHECKS; check++) {
            holdWidths(Sweeping.date(check));
        }
    }

    private static void holdWidths(LocalDate date) {
        Visit page = Demo.visit(Sweeping.place(date));
        for (Transmitter transmitter : Transmitter.values()) {
            double left = transmitter == Transmitter.ONE ? Sweeping.left(date) : 1;
            ArrayModel fed = afterSetting(transmitter, left);
            LEDGER.hold(page, "farWidth" + Station.number(transmitter), Field.width(fed));
            // Where the carrier's own DDM and the deflection cancel, near the middle.
            double slope = 0.31 / Field.width(fed);
            double centre = -FIELD.balance(transmitter) / slope;
            LEDGER.hold(page, "centre" + Station.number(transmitter), centre);
        }
    }

    private static ArrayModel afterSetting(Transmitter transmitter, double part) {
        return FIELD.fed(
                transmitter, part * courseSetting(transmitter), clearanceSetting(transmitter));
    }

    @Test
    void comparison() {
        Visit page = Demo.visit("sweep/comparison");
        double left = Sweeping.left(Sweeping.date(Sweeping.CHECKS));
        double before = Field.width(afterSetting(Transmitter.ONE, 1));
        double after = Field.width(afterSetting(Transmitter.ONE, left));
        LEDGER.hold(page, "width", 100 * (after / before - 1));
    }

    @Test
    void returnsAndPairs() {
        Visit list = Demo.visit("monitor/return-lines/as-found");
        for (String side : List.of("90", "150")) {
            List<Double> lengths =
                    SEASON.station().simulated().monitor().pairs().stream()
                            .map(pair -> side.equals("90") ? pair.element90() : pair.element150())
                            .map(element -> TRUTH.returns().get(element - 1).length())
                            .sorted()
                            .toList();
            double most = 1000 * (lengths.get(lengths.size() - 1) - lengths.get(0));
            double u =
                    Math.hypot(
                            list.uncertainty("longest" + side),
                            1000 * Station.TOOL / Math.sqrt(12));
            LEDGER.hold(list, "longest" + side, most, u);
        }
        SEASON.station().simulated().monitor().pairs().forEach(Truths::holdPair);
    }

    private static void holdPair(AntennaPair pair) {
        Visit page = Demo.last("monitor/pair-null/pair-" + pair.number());
        double beta =
                new Line(
                                TRUTH.lines().returnVelocityFactor(),
                                SEASON.station().array().course().frequency())
                        .phaseConstant();
        double on150 = left(pair.element150());
        double on90 = left(pair.element90());
        LEDGER.hold(page, "excessNow", beta * (on150 - on90));
        LEDGER.hold(page, "degreesPerInch", beta * Station.METRES_PER_INCH);
    }

    private static double left(int element) {
        return TRUTH.returns().get(element - 1).length() - SEASON.monitoring().cutOff(element);
    }

    @Test
    void alarms() {
        Visit page = Demo.visit("monitor/alarm-points");
        LEDGER.hold(page, "shift150", Keeping.ALARMS.get("course in the 150"));
        LEDGER.hold(page, "shift90", -Keeping.ALARMS.get("course in the 90"));
        LEDGER.hold(page, "wide", Keeping.ALARMS.get("wide"));
        LEDGER.hold(page, "narrow", Keeping.ALARMS.get("narrow"));
        // A wattmeter in steps of 0.1 W at 12 and 6 W: half a step is 0.5 and 0.9 %.
        assertEquals(Keeping.ALARMS.get("course power"), page.number("courseLeft"), 1);
        assertEquals(Keeping.ALARMS.get("clearance power"), page.number("clearanceLeft"), 1.8);
    }

    @Test
    void record() {
        double factor = 150 / 0.155; // ICAO Doc 8071: 150 µA are 0.155 DDM
        Visit reference = Demo.visit("record/facility-reference");
        Visit brief = Demo.visit("record/flight-brief");
        for (Transmitter transmitter : Transmitter.values()) {
            String number = Station.number(transmitter);
            LEDGER.hold(reference, "alignment" + number, FIELD.balance(transmitter));
            LEDGER.hold(brief, "course" + number, factor * FIELD.balance(transmitter));
            double width = Field.width(afterSetting(transmitter, 1));
            LEDGER.hold(brief, "flownWidth" + number, width);
        }
    }
}
