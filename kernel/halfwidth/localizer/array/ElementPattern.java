package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;

/** How strongly one element radiates towards each azimuth; all elements of an array are alike. */
public sealed interface ElementPattern {
    /** The same towards every azimuth. */
    ElementPattern ISOTROPIC = new CosinePower(0);

    /**
     * Returns the relative field.
     *
     * @param azimuth from the element's own axis (deg), positive to the 150 Hz side
     * @return the field relative to the axis (1)
     * @throws IllegalArgumentException if the pattern is not known at {@code azimuth}
     */
    double field(double azimuth);

    /**
     * Returns the relative field towards a place.
     *
     * @param across how far the place is to the 150 Hz side of the element's axis (m)
     * @param ahead how far it is in front of the array's line (m)
     * @return the field relative to the axis (1)
     * @throws IllegalArgumentException if the pattern is not known there
     */
    default double field(double across, double ahead) {
        return field(Math.toDegrees(Math.atan2(across, ahead)));
    }

    /**
     * The field cosᵖ θ in front of the array, none behind it; isotropic for p = 0.
     *
     * @param power the exponent p (1), 0 to 20
     */
    record CosinePower(double power) implements ElementPattern {

        /**
         * @throws IllegalArgumentException if the power is outside its range
         */
        public CosinePower {
            Require.within("power", power, new Range(0, 20), "");
        }

        @Override
        public double field(double azimuth) {
            double cosine = Math.cos(Math.toRadians(Require.finite("azimuth", azimuth, "deg")));
            return ofCosine(cosine);
        }

        @Override
        public double field(double across, double ahead) {
            return ofCosine(ahead / Math.sqrt(across * across + ahead * ahead));
        }

        private double ofCosine(double cosine) {
            return power == 0 ? 1 : Math.pow(Math.max(0, cosine), power);
        }
    }

    /**
     * Points of a measured or published pattern, with straight lines of field between them.
     *
     * @param azimuths the azimuths (deg), rising, at least two
     * @param fields the field at each (1), at least 0
     */
    record Table(List<Double> azimuths, List<Double> fields) implements ElementPattern {

        /**
         * @throws IllegalArgumentException if the lists differ in length, are shorter than two, do
         *     not rise, or hold an impossible value
         */
        public Table {
            azimuths = List.copyOf(azimuths);
            fields = List.copyOf(fields);
            Require.sameLength("azimuths and fields", azimuths.size(), fields.size());
            if (azimuths.size() < 2) {
                throw new IllegalArgumentException("element pattern must have at least two points");
            }
            fields.forEach(field -> Require.within("field", field, new Range(0, 100), ""));
            double last = -180 - 1e-9;
            for (double azimuth : azimuths) {
                Require.within("azimuth", azimuth, new Range(-180, 180), "deg");
                last = Require.above("azimuth", azimuth, last, "deg");
            }
        }

        /**
         * Returns the pattern of a table in decibels.
         *
         * @param azimuths the azimuths (deg), rising, at least two
         * @param decibels 20 log10 of the relative field at each (dB)
         * @return the pattern
         */
        public static Table ofDecibels(List<Double> azimuths, List<Double> decibels) {
            List<Double> fields = new ArrayList<>();
            decibels.forEach(level -> fields.add(Math.pow(10, level / 20)));
            return new Table(azimuths, fields);
        }

        @Override
        public double field(double azimuth) {
            Range known = new Range(azimuths.get(0), azimuths.get(azimuths.size() - 1));
            Require.within("azimuth of the element pattern", azimuth, known, "deg");
            return lines().value(azimuth);
        }

        private UnivariateFunction lines() {
            return new LinearInterpolator().interpolate(toArray(azimuths), toArray(fields));
        }

        private static double[] toArray(List<Double> values) {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
