package halfwidth.localizer.station;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.line.Line;
import halfwidth.localizer.signal.Tone;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.complex.Complex;

/**
 * The monitor returns of a simulated station: the course signal of every element, brought back over
 * a line of its own and recombined.
 *
 * <p>The excess of a pair is the electrical length of the return from the 150 Hz side less that
 * from the 90 Hz side: with equal amplitudes and sidebands in phase its pair reads −K tan(δ/2).
 */
public final class SimulatedMonitor {
    private static final double TURN = 360;

    private final SimulatedStation station;
    private final List<AntennaPair> pairs;
    private final double[] cuts;
    private AntennaPair adapterPair;
    private Tone adapterSide;

    SimulatedMonitor(SimulatedStation station) {
        this.station = station;
        this.pairs = PairSearch.pairs(station.array().positions());
        this.cuts = new double[station.array().positions().size()];
    }

    /**
     * Returns the pairs that the array has.
     *
     * @return the pairs, the innermost first; elements without a partner are in none
     */
    public List<AntennaPair> pairs() {
        return pairs;
    }

    /**
     * Puts the adapter into the return of one side of a pair, and takes it out of where it was.
     *
     * @param pair the pair
     * @param side the side, by its tone
     */
    public void insertAdapter(AntennaPair pair, Tone side) {
        adapterPair = pair;
        adapterSide = side;
    }

    /** Takes the adapter out. */
    public void removeAdapter() {
        adapterPair = null;
        adapterSide = null;
    }

    /**
     * Cuts a return line shorter.
     *
     * @param element number of the element it comes from (1), from 1
     * @param metres how much to cut off (m), at least 0
     * @return how much was cut, to the step of the tool (m)
     * @throws IllegalArgumentException if there is no such element, or the cuts of the line add up
     *     to more than 10 m
     */
    public double cut(int element, double metres) {
        int n = index(element);
        double cut = station.toolCut(metres);
        cuts[n] =
                Require.within("all cut off the return", cuts[n] + cut, SimulatedStation.CUTS, "m");
        return cut;
    }

    /**
     * Reads one pair, with every other return terminated.
     *
     * @param pair the pair connected
     * @param transmitter the transmitter on the air
     * @return the DDM shown (DDM)
     */
    public double pairDdm(AntennaPair pair, Transmitter transmitter) {
        return ddm(transmitter, pair.element90() - 1, pair.element150() - 1);
    }

    /**
     * Reads all pairs combined with equal weights.
     *
     * @param transmitter the transmitter on the air
     * @return the DDM shown (DDM)
     * @throws IllegalArgumentException if the array has no pair
     */
    public double compositeDdm(Transmitter transmitter) {
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("array must have a pair to have a composite");
        }
        return ddm(
                transmitter,
                pairs.stream()
                        .flatMapToInt(p -> IntStream.of(p.element90() - 1, p.element150() - 1))
                        .toArray());
    }

    private double ddm(Transmitter transmitter, int... elements) {
        Carrier carrier = station.transmission().carrier(transmitter, Channel.COURSE);
        Complex csb = Complex.ZERO;
        Complex sbo = Complex.ZERO;
        for (int n : elements) {
            csb = csb.add(returned(carrier.csb().get(n), n));
            sbo = sbo.add(returned(carrier.sbo().get(n), n));
        }
        double truth = 2 * sbo.divide(csb).getReal();
        double balance = station.transmission().balance(transmitter, Channel.COURSE);
        return station.readDdm(truth + balance);
    }

    private Complex returned(Current current, int n) {
        double gain = station.truth().returns().get(n).gain();
        return current.scaled(gain).phasor().multiply(Complex.I.multiply(-radians(n)).exp());
    }

    private double radians(int n) {
        return Math.toRadians(delay(n));
    }

    /** Electrical length of a return as it is now, with the adapter if it is in (deg). */
    private double delay(int n) {
        Truth truth = station.truth();
        double frequency = station.array().course().frequency();
        Line line = new Line(truth.lines().returnVelocityFactor(), frequency);
        double length = truth.returns().get(n).length() - cuts[n];
        boolean adapted = adapterPair != null && adapterPair.element(adapterSide) - 1 == n;
        return line.phaseConstant() * length + (adapted ? truth.lines().adapter() : 0);
    }

    /**
     * Reads a return against another one with the phase meter, through the line.
     *
     * @param element number of the element it comes from (1), from 1
     * @param reference number of the element that it is measured against (1)
     * @return by how much more it delays (deg), modulo a turn: 0 to below 360
     * @throws IllegalArgumentException if there is no such element
     */
    public double delayReading(int element, int reference) {
        double difference = delay(index(element)) - delay(index(reference));
        double shown = station.readPhase(difference);
        double turned = shown - TURN * Math.floor(shown / TURN);
        return turned < TURN ? turned : 0;
    }

    private int index(int element) {
        Require.within("element", element, new Range(1, cuts.length), "");
        return element - 1;
    }
}
