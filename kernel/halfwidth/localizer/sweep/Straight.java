package halfwidth.localizer.sweep;

/** The straight line through two readings. */
record Straight(double azimuth, double ddm, double slope) {

    static Straight between(SweepReading one, SweepReading other) {
        double slope = (other.value() - one.value()) / (other.azimuth() - one.azimuth());
        return new Straight(one.azimuth(), one.value(), slope);
    }

    double ddmAt(double where) {
        return ddm + slope * (where - azimuth);
    }

    double azimuthOf(double value) {
        return azimuth + (value - ddm) / slope;
    }
}
