package halfwidth.localizer.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Detector;
import halfwidth.localizer.array.Fault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArrayDrawTest {
    private static final Tolerances NO_ERRORS = Tolerances.independent(Spread.NONE);

    private static ArrayModel shipped(String file) {
        return ArrayFile.read(Path.of("datasets", "arrays", file));
    }

    private static double[] drawn(ArrayModel array) {
        List<Steering> steerings =
                array.carriers().stream().map(c -> new Steering(array.positions(), c)).toList();
        ArrayDraw draw = new ArrayDraw(array, steerings, NO_ERRORS);
        draw.draw(new SplittableRandom(7));
        return draw.draw(new SplittableRandom(1)); // the second one finds used memory
    }

    /** The shared rows of the fast sums against the plain sum of phasors of the array model. */
    private static void assertLikeTheModel(ArrayModel array) {
        double[] ddm = drawn(array);
        for (int i = 0; i < ddm.length; i++) {
            double expected = array.farField(-35 + i * 0.1).ddm();
            // The capture table's 2e-5 times how far the carriers differ, and rounding at nulls.
            assertEquals(expected, ddm[i], 2e-5 * (1 + expected * expected));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fourteen-two-carrier.csv", "ten-one-carrier.csv", "nine-uneven.csv"})
    void readsAsTheModelDoes(String file) {
        assertLikeTheModel(shipped(file));
    }

    @Test
    void readsAsTheModelDoesWithoutAnySymmetry() {
        ArrayModel array = shipped("fourteen-two-carrier.csv");
        for (int n = 1; n <= 14; n++) {
            array = array.with(Fault.phaseChange(n, 9 * Math.sin(2.1 * n)));
            array = array.with(Fault.amplitudeChange(n, Math.cos(1.3 * n)));
        }
        List<Double> uneven = new ArrayList<>();
        array.positions().forEach(x -> uneven.add(x + 0.2 * Math.sin(3 * x)));
        assertLikeTheModel(new ArrayModel("uneven", uneven, array.pattern(), array.carriers()));
    }

    @Test
    void weighsTheCarriersAsTheDetectorDoes() {
        for (double ratio = 0; ratio <= 1; ratio += 0.00137) {
            double exact = Detector.LINEAR_ENVELOPE.weightOfFirst(1, ratio);
            assertEquals(exact, CaptureTable.weightOfFirst(1, ratio * ratio), 2e-5);
            assertEquals(1 - exact, CaptureTable.weightOfFirst(ratio * ratio, 1), 2e-5);
        }
        assertEquals(0.5, CaptureTable.weightOfFirst(3, 3), 1e-12);
    }
}
