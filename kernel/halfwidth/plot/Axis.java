package halfwidth.plot;

/** What an axis carries; a unit of "" or "1" is not written. */
record Axis(String label, String unit) {
    static final Axis UNNAMED = new Axis("", "");

    boolean hasUnit() {
        return !unit.isBlank() && !unit.equals("1");
    }

    /** The label with its unit, as in {@code Total cut (in)}. */
    String words() {
        return hasUnit() ? (label + " (" + unit + ")").strip() : label;
    }

    /** A value on this axis with its unit, as in {@code 1.25 in}. */
    String words(double value) {
        String number = Figures.brief(value);
        if (!hasUnit()) {
            return number;
        }
        return unit.equals("°") ? number + unit : number + " " + unit;
    }
}
