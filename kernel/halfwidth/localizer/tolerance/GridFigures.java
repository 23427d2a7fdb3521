package halfwidth.localizer.tolerance;

import halfwidth.localizer.signal.Ddm;

/** Reads the figures of a pattern off the grid; NaN, inside this package only, for none. */
final class GridFigures {
    private static final double INNER_DDM = 0.180;
    private static final int INNER_END = Grid.place(10);

    private static final int NEWTON_STEPS = 4;

    private final double[] ddm;

    GridFigures(double[] ddm) {
        this.ddm = ddm;
    }

    /** Place of the zero crossing nearest to azimuth 0. */
    double coursePlace() {
        for (int k = 0; k < Grid.SIDE; k++) {
            double right = crossing(Grid.SIDE + k, 0);
            double left = crossing(Grid.SIDE - k - 1, 0);
            boolean rightIsNearer = right - Grid.SIDE < Grid.SIDE - left;
            double nearest = Double.isNaN(left) || rightIsNearer ? right : left;
            if (!Double.isNaN(nearest)) {
                return nearest;
            }
        }
        return Double.NaN;
    }

    /** Place of the half-width point on the side of a sign, outwards from the course line. */
    double edgePlace(double course, int sign) {
        if (Double.isNaN(course)) {
            return Double.NaN;
        }
        int start = sign > 0 ? (int) Math.floor(course) : (int) Math.ceil(course) - 1;
        for (int i = start; i >= 0 && i < ddm.length - 1; i += sign) {
            double place = crossing(i, sign * Ddm.COURSE_SECTOR_EDGE);
            if (!Double.isNaN(place)) {
                return place;
            }
        }
        return Double.NaN;
    }

    /** Where the DDM passes a level between a point and the next. */
    private double crossing(int i, double level) {
        double before = ddm[i] - level;
        double after = ddm[i + 1] - level;
        if (before >= 0 == after >= 0) {
            return Double.NaN;
        }
        double linear = before / (before - after);
        if (i == 0 || i + 2 == ddm.length) {
            return i + linear;
        }
        return isPole(i) ? Double.NaN : i + cubic(i, level, linear);
    }

    /** A null of the carrier: the DDM runs away from it on both sides, and jumps across. */
    private boolean isPole(int i) {
        double across = ddm[i + 1] - ddm[i];
        return (ddm[i] - ddm[i - 1]) * across < 0 && (ddm[i + 2] - ddm[i + 1]) * across < 0;
    }

    /** The root of the cubic through the two points before and the two after, by Newton's rule. */
    private double cubic(int i, double level, double start) {
        double a = ddm[i - 1];
        double b = ddm[i];
        double c = ddm[i + 1];
        double d = ddm[i + 2];
        double linear = -a / 3 - b / 2 + c - d / 6;
        double square = a / 2 - b + c / 2;
        double cube = (d - a) / 6 + (b - c) / 2;
        double t = start;
        for (int k = 0; k < NEWTON_STEPS; k++) {
            double value = b - level + t * (linear + t * (square + t * cube));
            double slope = linear + t * (2 * square + t * 3 * cube);
            t -= value / slope;
        }
        return t >= 0 && t <= 1 ? t : start;
    }

    /** Least DDM of either side from 10° to the grid's end, each by its own tone. */
    double outerClearance() {
        int end = ddm.length - 1;
        return Math.min(least(INNER_END, end, 1), least(INNER_END, end, -1));
    }

    /** Least DDM of either side from where it reaches 0.180 to 10°. */
    double innerClearance() {
        return Math.min(inner(1), inner(-1));
    }

    private double inner(int sign) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (int place = Grid.SIDE; place <= INNER_END; place++) {
            double value = at(place, sign);
            greatest = Math.max(greatest, value);
            if (value >= INNER_DDM) {
                return least(place, INNER_END, sign);
            }
        }
        return greatest;
    }

    private double least(int from, int to, int sign) {
        double least = Double.POSITIVE_INFINITY;
        for (int place = from; place <= to; place++) {
            least = Math.min(least, at(place, sign));
        }
        return least;
    }

    private double at(int place, int sign) {
        return sign > 0 ? ddm[place] : -ddm[ddm.length - 1 - place];
    }
}
