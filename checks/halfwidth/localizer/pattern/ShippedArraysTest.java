package halfwidth.localizer.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.Detector;
import halfwidth.localizer.signal.Tone;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShippedArraysTest {
    private static final Path FOLDER = Path.of("datasets", "arrays");

    private static ArrayModel shipped(String file) {
        return ArrayFile.read(FOLDER.resolve(file));
    }

    /** DDM by sums of sines and cosines of the file's symmetric currents, no phasors. */
    private static double ddm(ArrayModel array, int carrier, double azimuth) {
        double k = 2 * Math.PI * array.carriers().get(carrier).frequency() / 299_792_458;
        double u = k * Math.sin(Math.toRadians(azimuth));
        double csb = 0;
        double sbo = 0;
        for (int n = 0; n < array.positions().size(); n++) {
            double x = array.positions().get(n);
            Current c = array.carriers().get(carrier).csb().get(n);
            Current s = array.carriers().get(carrier).sbo().get(n);
            csb += (c.phase() == 180 ? -1 : 1) * c.amplitude() * Math.cos(u * x);
            sbo += Math.signum(-s.phase()) * s.amplitude() * Math.sin(u * x);
        }
        return 2 * sbo / csb;
    }

    @ParameterizedTest
    @ValueSource(strings = {"fourteen-two-carrier.csv", "ten-one-carrier.csv", "nine-uneven.csv"})
    void sayThatTheyAreInvented(String file) throws IOException {
        assertTrue(Files.readString(FOLDER.resolve(file)).startsWith("# Invented"));
        assertTrue(shipped(file).name().contains("invented"));
    }

    @Test
    void readDifferentlyOnASquareLawDetector() {
        ArrayModel array = shipped("fourteen-two-carrier.csv");
        double course = Math.pow(array.farField(5).course().amplitude(), 2);
        double clearance = Math.pow(array.farField(5).clearance().orElseThrow().amplitude(), 2);
        // Weighed by power: r²/(1 + r²).
        double weighed =
                (course * ddm(array, 0, 5) + clearance * ddm(array, 1, 5)) / (course + clearance);
        ArrayPattern pattern = ArrayPattern.farField(array);
        assertEquals(weighed, pattern.detectedBy(Detector.SQUARE_LAW).ddm(5), 1e-9);
        assertEquals(pattern.ddm(5), pattern.detectedBy(Detector.LINEAR_ENVELOPE).ddm(5), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fourteen-two-carrier.csv", "ten-one-carrier.csv", "nine-uneven.csv"})
    void haveACourseOfAboutFourDegrees(String file) {
        PredictedCourse sector = ArrayPattern.farField(shipped(file)).course();
        assertEquals(0, sector.courseLine(), 1e-6);
        assertEquals(4, sector.width(), 0.05);
        assertEquals(50, sector.symmetry(Tone.HZ_150), 1e-4);
        // "Substantially linear" (Annex 10) has no figure; 2 % of 0.155 is our own.
        assertTrue(sector.linearity() < 0.02 * 0.155, () -> "linearity " + sector.linearity());
    }

    /** ICAO Annex 10 Vol I, 3.1.3.7.3 (from secondary texts): 0.180 to 10°, 0.155 to 35°. */
    @ParameterizedTest
    @ValueSource(strings = {"fourteen-two-carrier.csv", "nine-uneven.csv"})
    void keepTheirClearanceOverAllTheCoverage(String file) {
        List<SideClearance> clearances = ArrayPattern.farField(shipped(file)).clearances();
        assertTrue(clearances.get(0).leastDdm() >= 0.180);
        assertTrue(clearances.get(1).leastDdm() >= 0.180);
        assertTrue(clearances.get(2).leastDdm() >= 0.155);
        assertTrue(clearances.get(3).leastDdm() >= 0.155);
        assertEquals(1, ArrayPattern.farField(shipped(file)).zeroCrossings().size());
    }

    @Test
    void readAsTheirSumsOfSinesAndCosines() {
        ArrayModel array = shipped("fourteen-two-carrier.csv");
        for (double azimuth = -34.5; azimuth < 35; azimuth += 3) {
            PatternPoint point = ArrayPattern.farField(array).at(azimuth);
            double course = ddm(array, 0, azimuth);
            assertEquals(course, point.courseDdm(), 1e-9 * (1 + course * course));
            assertEquals(ddm(array, 1, azimuth), point.clearanceDdm(), 1e-9);
            double w = point.prediction().courseWeight();
            assertEquals(w * course + (1 - w) * ddm(array, 1, azimuth), point.ddm(), 1e-9);
        }
    }

    @Test
    void leaveTheCourseToTheCourseCarrier() {
        // Capture wants about 10 dB of one carrier over the other: common practice, no source.
        ArrayPattern pattern = ArrayPattern.farField(shipped("fourteen-two-carrier.csv"));
        for (double azimuth = -2; azimuth <= 2; azimuth += 0.5) {
            PatternPoint point = pattern.at(azimuth);
            assertTrue(point.courseLevel() - point.clearanceLevel() > 10);
        }
        assertTrue(pattern.at(15).clearanceLevel() - pattern.at(15).courseLevel() > 10);
    }

    @Test
    void useTheExactTenElementChebyshevSet() {
        // Solved for z0 = 1.085152 (see ChebyshevTaperTest), edge = 1; the file has four decimals.
        double[] fromEdge = {1, 1.35705, 1.97091, 2.48299, 2.77454};
        List<Current> csb = shipped("ten-one-carrier.csv").course().csb();
        for (int n = 0; n < 5; n++) {
            assertEquals(fromEdge[n] / 2.77454, csb.get(n).amplitude(), 5.1e-5);
            assertEquals(csb.get(n).amplitude(), csb.get(9 - n).amplitude());
        }
    }
}
