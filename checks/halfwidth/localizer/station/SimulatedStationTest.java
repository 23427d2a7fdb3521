package halfwidth.localizer.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.array.Place;
import halfwidth.localizer.transmit.BothSides;
import halfwidth.localizer.transmit.CoarsePhasing;
import halfwidth.localizer.uncertainty.Estimate;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SimulatedStationTest {
    private static final double C = 299_792_458;
    private static final ArrayModel ARRAY =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    private static SimulatedStation exact(long seed) {
        return SimulatedStation.random(seed, ARRAY, Instruments.exact());
    }

    /** Field of one set of currents by its definition: exact distances, amplitude 1/r. */
    private static Complex field(Channel channel, boolean sbo, Place place) {
        var carrier = ARRAY.carriers().get(channel.ordinal());
        var currents = sbo ? carrier.sbo() : carrier.csb();
        double k = 2 * Math.PI * carrier.frequency() / C;
        double px = place.distance() * Math.sin(Math.toRadians(place.azimuth()));
        double py = place.distance() * Math.cos(Math.toRadians(place.azimuth()));
        Complex sum = Complex.ZERO;
        for (int n = 0; n < currents.size(); n++) {
            double r = Math.hypot(px - ARRAY.positions().get(n), py);
            double phase = Math.toRadians(currents.get(n).phase()) - k * (r - place.distance());
            double amplitude = currents.get(n).amplitude() * Math.pow(py / r, 1.5) / r;
            sum = sum.add(new Complex(0, phase).exp().multiply(amplitude));
        }
        return sum;
    }

    @Law(tries = 50)
    void readsCourseAndClearanceAsTheirComplexSums(Draw draw) {
        double azimuth = draw.between(-30, 30);
        double offset = draw.between(-90, 90);
        double cut = draw.between(0, 1);
        Transmitter transmitter = draw.of(Transmitter.values());
        for (Channel channel : Channel.values()) {
            SimulatedStation station = exact(11);
            Place place = new Place(azimuth + 0.123, 250);
            boolean course = channel == Channel.COURSE;
            station.setSboOffset(transmitter, channel, offset);
            station.setSboAmplitude(transmitter, channel, 1.3);
            station.cutFeed(course ? FeedPath.COURSE_SBO : FeedPath.CLEARANCE_SBO, cut);
            station.cutFeed(course ? FeedPath.COURSE_CSB : FeedPath.CLEARANCE_CSB, 0.2);
            station.insertQuadraturePiece(channel);

            SignalTruth hidden = station.truth().signal(transmitter, channel);
            Truth.Lines lines = station.truth().lines();
            double frequency = ARRAY.carriers().get(channel.ordinal()).frequency();
            double beta = 360 * frequency / (C * lines.feedVelocityFactor());
            double lead = offset - hidden.sboDelay() + beta * (cut - 0.2) - lines.quadraturePiece();
            Complex ratio =
                    field(channel, true, place)
                            .divide(field(channel, false, place))
                            .multiply(new Complex(0, Math.toRadians(lead)).exp())
                            .multiply(1.3 * hidden.sboAmplitude());
            double expected = 2 * ratio.getReal() + hidden.balance();
            Radiated radiated = course ? Radiated.COURSE : Radiated.CLEARANCE;
            double read = station.ddmAt(place, transmitter, radiated).orElseThrow();
            // Rounding grows where the carrier has a null.
            assertEquals(expected, read, 1e-9 * (1 + expected * expected));
        }
    }

    @Test
    void weighsBothCarriersByCapture() {
        SimulatedStation station = exact(3);
        Place place = new Place(4.5, 400);
        double course = station.ddmAt(place, Transmitter.ONE, Radiated.COURSE).orElseThrow();
        double other = station.ddmAt(place, Transmitter.ONE, Radiated.CLEARANCE).orElseThrow();
        double a = field(Channel.COURSE, false, place).norm();
        double b = field(Channel.CLEARANCE, false, place).norm();
        // wB = B M_B/M by differences of the mean envelope, integrated over the beat.
        double step = 1e-5 * b;
        double weight =
                b * (envelope(a, b + step) - envelope(a, b - step)) / (2 * step) / envelope(a, b);
        double both = station.ddmAt(place, Transmitter.ONE, Radiated.BOTH).orElseThrow();
        assertEquals((1 - weight) * course + weight * other, both, 1e-6);
    }

    private static double envelope(double a, double b) {
        double sum = 0;
        for (int i = 0; i < 4000; i++) {
            double beat = 2 * Math.PI * (i + 0.5) / 4000;
            sum += Math.hypot(a + b * Math.cos(beat), b * Math.sin(beat));
        }
        return sum / 4000;
    }

    @Test
    void isInPhaseWhereTheOffsetMeetsTheHiddenDelay() {
        SimulatedStation station = exact(5);
        SignalTruth hidden = station.truth().signal(Transmitter.TWO, Channel.COURSE);
        double best = deflection(station, hidden.sboDelay());
        // The cosine rule: 10 degrees off on either side costs 1.52 %.
        assertEquals(best * 0.98481, deflection(station, hidden.sboDelay() + 10), 1e-6);
        assertEquals(best * 0.98481, deflection(station, hidden.sboDelay() - 10), 1e-6);
        double design = ARRAY.withCourse(ARRAY.course()).farField(2).course().ddm();
        assertEquals(design * hidden.sboAmplitude(), best, 1e-9);
    }

    private static double deflection(SimulatedStation station, double offset) {
        station.setSboOffset(Transmitter.TWO, Channel.COURSE, offset);
        double on150 = station.ddmFarAway(2, Transmitter.TWO, Radiated.COURSE);
        double on90 = station.ddmFarAway(-2, Transmitter.TWO, Radiated.COURSE);
        return (on150 - on90) / 2;
    }

    /** A crew's phasing: trim the offset to the null with the piece in, then cut by it. */
    @Test
    void letsACutOfTheSboFeedTakeAPositiveOffsetAway() {
        long seed =
                LongStream.range(0, 50)
                        .filter(s -> nulled(exact(s)) > 20)
                        .findFirst()
                        .orElseThrow();
        SimulatedStation station = exact(seed);
        double before = nulled(station);
        Truth truth = station.truth();
        double piece = truth.lines().quadraturePiece();
        double hidden = truth.signal(Transmitter.ONE, Channel.COURSE).sboDelay();
        assertEquals(hidden + piece - 90, before, 1e-6);
        station.cutFeed(FeedPath.COURSE_SBO, 0.1);
        double beta = 360 * ARRAY.course().frequency() / (C * truth.lines().feedVelocityFactor());
        assertEquals(before - 0.1 * beta, nulled(station), 1e-6);
        station.cutFeed(FeedPath.COURSE_CSB, 0.04);
        assertEquals(before - 0.06 * beta, nulled(station), 1e-6);
    }

    /** The offset at which the quadrature deflection D sin ε vanishes, by repeated asin. */
    private static double nulled(SimulatedStation station) {
        double offset = 0;
        station.insertQuadraturePiece(Channel.COURSE);
        for (int i = 0; i < 60; i++) {
            station.setSboOffset(Transmitter.ONE, Channel.COURSE, offset);
            double on150 = station.ddmFarAway(2, Transmitter.ONE, Radiated.COURSE);
            double on90 = station.ddmFarAway(-2, Transmitter.ONE, Radiated.COURSE);
            double design = ARRAY.farField(2).course().ddm();
            offset -= 0.7 * Math.toDegrees((on150 - on90) / 2 / design);
        }
        station.removeQuadraturePiece(Channel.COURSE);
        return offset;
    }

    /** A crew that phases near the array finds the phase that the place adds as well. */
    @ParameterizedTest
    @ValueSource(doubles = {100, 300, 1000})
    void addsThePhaseOfAPlaceNearTheArray(double distance) {
        SimulatedStation station = exact(8);
        BothSides without = bothSides(station, distance);
        station.insertQuadraturePiece(Channel.COURSE);
        BothSides with = bothSides(station, distance);
        Estimate piece = Estimate.exact(station.truth().lines().quadraturePiece());
        double found = new CoarsePhasing(without, with, piece).phaseError().value();
        double lead = -station.truth().signal(Transmitter.ONE, Channel.COURSE).sboDelay();
        Place place = new Place(2, distance);
        Complex csb = field(Channel.COURSE, false, place);
        double ofPlace =
                Math.toDegrees(field(Channel.COURSE, true, place).divide(csb).getArgument());
        assertEquals(lead + ofPlace, found, 1e-6);
        assertEquals(ofPlace, ARRAY.nearField(2, distance).course().sboPhase(), 1e-9);
        // It falls as 1/distance and is more than a crew would put up with at 300 m.
        assertTrue(Math.abs(ofPlace) > 10 * 300 / distance);
    }

    private static BothSides bothSides(SimulatedStation station, double distance) {
        return new BothSides(near(station, 2, distance), near(station, -2, distance), 1e-9);
    }

    private static double near(SimulatedStation station, double azimuth, double distance) {
        return station.ddmAt(new Place(azimuth, distance), Transmitter.ONE, Radiated.COURSE)
                .orElseThrow();
    }

    @Test
    void givesTheSameReadingsForTheSameSeedAndHandling() {
        for (int round = 0; round < 3; round++) {
            SimulatedStation one = SimulatedStation.random(9, ARRAY);
            SimulatedStation two = SimulatedStation.random(9, ARRAY);
            assertEquals(one.truth(), two.truth());
            for (Place mark : one.marks()) {
                assertEquals(
                        one.ddmAt(mark, Transmitter.ONE, Radiated.BOTH),
                        two.ddmAt(mark, Transmitter.ONE, Radiated.BOTH));
            }
        }
        assertNotEquals(exact(1).truth(), exact(2).truth());
    }

    @Test
    void showsDdmInTheStepsOfItsReceiver() {
        SimulatedStation station = SimulatedStation.random(4, ARRAY);
        SimulatedStation exact = exact(4);
        for (double azimuth = -30; azimuth < 30; azimuth += 7) {
            double shown = station.ddmFarAway(azimuth, Transmitter.ONE, Radiated.BOTH);
            double truth = exact.ddmFarAway(azimuth, Transmitter.ONE, Radiated.BOTH);
            assertEquals(Math.rint(shown * 1000), shown * 1000, 1e-9);
            // Half a step and five standard deviations of the noise.
            assertEquals(truth, shown, 0.0005 + 5 * 0.0003);
        }
    }

    @Test
    void hasNoReadingAtALostMark() {
        List<SimulatedStation> stations = LongStream.range(0, 20).mapToObj(s -> exact(s)).toList();
        assertTrue(stations.stream().anyMatch(s -> !s.truth().lostMarks().isEmpty()));
        for (SimulatedStation station : stations) {
            for (Place mark : station.marks()) {
                OptionalDouble reading = station.ddmAt(mark, Transmitter.TWO, Radiated.BOTH);
                assertEquals(station.truth().lostMarks().contains(mark), reading.isEmpty());
            }
        }
        assertEquals(27, stations.get(0).marks().size());
    }

    @Test
    void cutsInTheStepsOfTheTool() {
        SimulatedStation station = SimulatedStation.random(1, ARRAY);
        assertEquals(0.124, station.cutFeed(FeedPath.COURSE_SBO, 0.12437), 1e-12);
        assertEquals(0.12437, exact(1).cutFeed(FeedPath.COURSE_SBO, 0.12437));
    }

    @ParameterizedTest
    @EnumSource(Transmitter.class)
    void keepsTheTransmittersSettingsApart(Transmitter transmitter) {
        SimulatedStation station = exact(2);
        Transmitter other = transmitter == Transmitter.ONE ? Transmitter.TWO : Transmitter.ONE;
        double before = station.ddmFarAway(2, other, Radiated.COURSE);
        station.setSboOffset(transmitter, Channel.COURSE, 77);
        station.setSboAmplitude(transmitter, Channel.COURSE, 0.1);
        assertEquals(before, station.ddmFarAway(2, other, Radiated.COURSE));
    }

    @Test
    void refusesWhatCannotBeDone() {
        SimulatedStation station = exact(1);
        assertThrows(
                IllegalArgumentException.class, () -> station.cutFeed(FeedPath.COURSE_SBO, -0.1));
        station.cutFeed(FeedPath.COURSE_SBO, 5);
        station.cutFeed(FeedPath.COURSE_SBO, 4.9);
        assertThrows(
                IllegalArgumentException.class, () -> station.cutFeed(FeedPath.COURSE_SBO, 0.2));
        assertThrows(
                IllegalStateException.class, () -> station.removeQuadraturePiece(Channel.COURSE));
        assertThrows(
                IllegalArgumentException.class,
                () -> station.setSboOffset(Transmitter.ONE, Channel.COURSE, 200));
    }

    @Test
    void hasNoClearanceWhereTheArrayHasNone() {
        ArrayModel nine = ArrayFile.read(Path.of("datasets", "arrays", "nine-uneven.csv"));
        SimulatedStation station = SimulatedStation.random(1, nine, Instruments.exact());
        assertThrows(
                IllegalArgumentException.class,
                () -> station.ddmFarAway(2, Transmitter.ONE, Radiated.CLEARANCE));
        assertThrows(
                IllegalArgumentException.class, () -> station.cutFeed(FeedPath.CLEARANCE_CSB, 0.1));
        assertEquals(
                station.ddmFarAway(2, Transmitter.ONE, Radiated.COURSE),
                station.ddmFarAway(2, Transmitter.ONE, Radiated.BOTH));
    }
}
