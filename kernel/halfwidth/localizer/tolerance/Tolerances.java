package halfwidth.localizer.tolerance;

/**
 * Where random errors come from; what each source adds is independent of all others.
 *
 * @param elements each element with its cable: all its currents alike
 * @param currents each current of each element on its own: the outputs of the distribution unit
 * @param paths each signal as a whole (CSB and SBO of each carrier): its common line and phaser
 */
public record Tolerances(Spread elements, Spread currents, Spread paths) {

    /**
     * Returns errors of every current on its own, and no other.
     *
     * @param spread of each current
     * @return the tolerances
     */
    public static Tolerances independent(Spread spread) {
        return new Tolerances(Spread.NONE, spread, Spread.NONE);
    }

    /**
     * Returns errors of each element's cable, which all its currents share, and no other.
     *
     * @param spread of each cable
     * @return the tolerances
     */
    public static Tolerances commonToFeed(Spread spread) {
        return new Tolerances(spread, Spread.NONE, Spread.NONE);
    }
}
