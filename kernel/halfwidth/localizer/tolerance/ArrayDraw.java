package halfwidth.localizer.tolerance;

import halfwidth.localizer.array.ArrayModel;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** Draws the DDM over the grid, again and again into the same memory; for one thread. */
final class ArrayDraw {
    private final ErrorDraw errors;
    private final List<CarrierDraw> carriers;
    private final double[] ddm = new double[Grid.POINTS];

    ArrayDraw(ArrayModel array, List<Steering> steerings, Tolerances tolerances) {
        this.errors = new ErrorDraw(tolerances, array.positions().size());
        this.carriers =
                IntStream.range(0, steerings.size())
                        .mapToObj(c -> new CarrierDraw(array.carriers().get(c), steerings.get(c)))
                        .toList();
    }

    /** The combined DDM at every azimuth, valid until the next draw. */
    double[] draw(RandomGenerator random) {
        errors.nextElements(random);
        for (CarrierDraw carrier : carriers) {
            carrier.draw(errors, random);
        }
        CarrierDraw course = carriers.get(0);
        if (carriers.size() == 1) {
            for (int i = 0; i < ddm.length; i++) {
                ddm[i] = course.ddm(i);
            }
        } else {
            combine(course, carriers.get(1));
        }
        return ddm;
    }

    private void combine(CarrierDraw course, CarrierDraw clearance) {
        for (int i = 0; i < ddm.length; i++) {
            double weight = CaptureTable.weightOfFirst(course.power(i), clearance.power(i));
            ddm[i] = part(weight, course, i) + part(1 - weight, clearance, i);
        }
    }

    private static double part(double weight, CarrierDraw carrier, int i) {
        return weight == 0 ? 0 : weight * carrier.ddm(i);
    }
}
