package halfwidth.job;

/**
 * A page filled in once, as one pair, one sweep or one year; a page that is filled in only once
 * needs no name for it.
 *
 * @param page the page's name, as in {@code monitor/pair-null}
 * @param name what sets this visit apart, as in {@code pair 3}; "" if nothing need
 */
public record Visit(String page, String name) {
    /** What a sheet has room for; an older program took more. */
    static final int LONGEST_NAME = 120;

    /**
     * @throws JobRefused if the name has a line break or blanks at an end
     */
    public Visit {
        if (!name.equals(name.strip()) || name.indexOf('\n') >= 0 || name.indexOf('\r') >= 0) {
            throw new JobRefused(
                    "visit \"" + name + "\" must be one line without blanks around it");
        }
    }

    /** As a person reads it: {@code monitor/pair-null, pair 3}. */
    @Override
    public String toString() {
        return name.isEmpty() ? page : page + ", " + name;
    }
}
