package halfwidth.localizer.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.signal.Tone;
import java.nio.file.Path;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class SimulatedMonitorTest {
    private static final double C = 299_792_458;
    private static final ArrayModel ARRAY =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    /** A station whose transmitter 1 has its sidebands in phase, so that K is the array's own. */
    private static SimulatedStation phased(long seed) {
        var station = SimulatedStation.random(seed, ARRAY, Instruments.exact());
        SignalTruth hidden = station.truth().signal(Transmitter.ONE, Channel.COURSE);
        station.setSboOffset(Transmitter.ONE, Channel.COURSE, hidden.sboDelay());
        return station;
    }

    private static double beta(SimulatedStation station) {
        double factor = station.truth().lines().returnVelocityFactor();
        return 360 * ARRAY.course().frequency() / (C * factor);
    }

    private static double excess(SimulatedStation station, AntennaPair pair) {
        List<Truth.Return> returns = station.truth().returns();
        double right = returns.get(pair.element150() - 1).length();
        double left = returns.get(pair.element90() - 1).length();
        return beta(station) * (right - left);
    }

    /** d = −K · 2a sin δ/(1 + a² + 2a cos δ), K = 2S/C, and the balance of the CSB. */
    private static double expected(SimulatedStation station, AntennaPair pair, double excess) {
        SignalTruth hidden = station.truth().signal(Transmitter.ONE, Channel.COURSE);
        int right = pair.element150() - 1;
        double s = ARRAY.course().sbo().get(right).amplitude() * hidden.sboAmplitude();
        double k = 2 * s / ARRAY.course().csb().get(right).amplitude();
        double a =
                station.truth().returns().get(right).gain()
                        / station.truth().returns().get(pair.element90() - 1).gain();
        double delta = Math.toRadians(excess);
        return -k * 2 * a * Math.sin(delta) / (1 + a * a + 2 * a * Math.cos(delta))
                + hidden.balance();
    }

    @Test
    void findsThePairsFromTheMiddleOutwards() {
        List<AntennaPair> pairs = phased(1).monitor().pairs();
        assertEquals(7, pairs.size());
        assertEquals(new AntennaPair(1, 7, 8), pairs.get(0));
        assertEquals(new AntennaPair(7, 1, 14), pairs.get(6));
        assertEquals(1, pairs.get(6).element(Tone.HZ_90));
    }

    @Test
    void readsAPairByItsExcess() {
        for (long seed = 1; seed <= 5; seed++) {
            SimulatedStation station = phased(seed);
            for (AntennaPair pair : station.monitor().pairs()) {
                double d = expected(station, pair, excess(station, pair));
                assertEquals(
                        d, station.monitor().pairDdm(pair, Transmitter.ONE), 1e-9 * (1 + d * d));
            }
        }
    }

    @Test
    void delaysTheSideThatTheAdapterIsIn() {
        SimulatedStation station = phased(2);
        AntennaPair pair = station.monitor().pairs().get(3);
        double adapter = station.truth().lines().adapter();
        double excess = excess(station, pair);
        station.monitor().insertAdapter(pair, Tone.HZ_150);
        double on150 = station.monitor().pairDdm(pair, Transmitter.ONE);
        assertEquals(expected(station, pair, excess + adapter), on150, 1e-9);
        station.monitor().insertAdapter(pair, Tone.HZ_90);
        double on90 = station.monitor().pairDdm(pair, Transmitter.ONE);
        assertEquals(expected(station, pair, excess - adapter), on90, 1e-9);
        station.monitor().removeAdapter();
        double without = station.monitor().pairDdm(pair, Transmitter.ONE);
        assertEquals(expected(station, pair, excess), without, 1e-9);
    }

    @Test
    void comesToItsNullByCuttingTheLongerSide() {
        SimulatedStation station = phased(3);
        double balance = station.truth().signal(Transmitter.ONE, Channel.COURSE).balance();
        for (AntennaPair pair : station.monitor().pairs()) {
            double metres = excess(station, pair) / beta(station);
            int longer = metres > 0 ? pair.element150() : pair.element90();
            station.monitor().cut(longer, Math.abs(metres));
            double d = station.monitor().pairDdm(pair, Transmitter.ONE);
            assertEquals(balance, d, 1e-9);
        }
        // Gains up to 5 % apart leave K/2 · 5 % of each pair, at most 0.57/2 · 0.05, in quadrature;
        // the pairs are not yet in phase with each other and may turn it into view.
        assertEquals(balance, station.monitor().compositeDdm(Transmitter.ONE), 0.02);
    }

    @Test
    void tellsTheDelayOfAReturnModuloATurn() {
        SimulatedStation station = phased(4);
        List<Truth.Return> returns = station.truth().returns();
        for (int element = 1; element <= 14; element++) {
            double longer = returns.get(element - 1).length() - returns.get(2).length();
            double degrees = beta(station) * longer;
            double reading = station.monitor().delayReading(element, 3);
            assertTrue(reading >= 0 && reading < 360);
            assertEquals(0, Math.IEEEremainder(reading - degrees, 360), 1e-8);
        }
        double before = station.monitor().delayReading(5, 3);
        station.monitor().cut(5, 0.05);
        double after = station.monitor().delayReading(5, 3);
        assertEquals(0, Math.IEEEremainder(before - after - 0.05 * beta(station), 360), 1e-8);
    }

    @Test
    void addsAllPairsAsPhasors() {
        SimulatedStation station = phased(6);
        SignalTruth hidden = station.truth().signal(Transmitter.TWO, Channel.COURSE);
        Complex csb = Complex.ZERO;
        Complex sbo = Complex.ZERO;
        for (int n = 0; n < 14; n++) {
            Truth.Return line = station.truth().returns().get(n);
            double lag = Math.toRadians(beta(station) * line.length());
            Current s = ARRAY.course().sbo().get(n);
            double lead = Math.toRadians(s.phase() - hidden.sboDelay());
            csb =
                    csb.add(
                            new Complex(0, -lag)
                                    .exp()
                                    .multiply(
                                            line.gain() * ARRAY.course().csb().get(n).amplitude()));
            sbo =
                    sbo.add(
                            new Complex(0, lead - lag)
                                    .exp()
                                    .multiply(line.gain() * s.amplitude() * hidden.sboAmplitude()));
        }
        double d = 2 * sbo.divide(csb).getReal() + hidden.balance();
        assertEquals(d, station.monitor().compositeDdm(Transmitter.TWO), 1e-9 * (1 + d * d));
    }

    @Test
    void leavesAMiddleElementOutOfThePairs() {
        ArrayModel nine = ArrayFile.read(Path.of("datasets", "arrays", "nine-uneven.csv"));
        SimulatedMonitor monitor = SimulatedStation.random(1, nine).monitor();
        assertEquals(4, monitor.pairs().size());
        assertTrue(monitor.pairs().stream().allMatch(p -> p.element90() < 5 && p.element150() > 5));
    }

    @Test
    void refusesElementsThatAreNotThere() {
        SimulatedMonitor monitor = phased(1).monitor();
        assertThrows(IllegalArgumentException.class, () -> monitor.cut(15, 0.1));
        assertThrows(IllegalArgumentException.class, () -> monitor.cut(1, -0.1));
        assertThrows(IllegalArgumentException.class, () -> monitor.delayReading(0, 1));
    }
}
