package halfwidth.localizer.array;

/**
 * The straight lines from the elements of an array to a place near it; all carriers take them.
 *
 * @param gains g(θ_n) R/r_n of each element (1), R/r so that it tends to the far field
 * @param leads R − r_n of each element (m): how much shorter its line is than that from the centre
 */
record SightLines(double[] gains, double[] leads) {

    static SightLines to(Place place, double[] positions, ElementPattern pattern) {
        double offset = place.offset();
        double ahead = place.ahead();
        double[] gains = new double[positions.length];
        double[] leads = new double[positions.length];
        for (int n = 0; n < positions.length; n++) {
            double x = positions[n];
            double across = offset - x;
            double path = Math.sqrt(across * across + ahead * ahead);
            gains[n] = pattern.field(across, ahead) * place.distance() / path;
            // R − r as (2 R x sin θ − x²)/(R + r): the difference itself loses digits far away.
            leads[n] = x * (2 * offset - x) / (place.distance() + path);
        }
        return new SightLines(gains, leads);
    }
}
