package halfwidth.localizer.array;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Evenly spaced, evenly fed arrays for checks against textbook closed forms. */
final class Uniform {
    static final double FREQUENCY = 110e6;
    static final double WAVELENGTH = 299_792_458 / FREQUENCY;

    private Uniform() {}

    static ArrayModel array(int elements, double spacing) {
        List<Current> csb = Collections.nCopies(elements, new Current(1, 0));
        return array(elements, spacing, csb);
    }

    static ArrayModel array(int elements, double spacing, List<Current> csb) {
        List<Double> positions =
                IntStream.range(0, elements)
                        .mapToObj(n -> (n - (elements - 1) / 2.0) * spacing * WAVELENGTH)
                        .toList();
        List<Current> sbo = Collections.nCopies(elements, Current.NONE);
        return new ArrayModel(
                "uniform",
                positions,
                ElementPattern.ISOTROPIC,
                List.of(new Carrier(FREQUENCY, 0.2, csb, sbo)));
    }
}
