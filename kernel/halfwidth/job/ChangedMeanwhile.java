package halfwidth.job;

/** Says that a value is no longer what the person who changes it saw; nothing was entered. */
public final class ChangedMeanwhile extends JobRefused {
    private final Place place;
    private final String now;

    ChangedMeanwhile(String message, Place place, String now) {
        super(message);
        this.place = place;
        this.now = now;
    }

    /** Where. */
    public Place place() {
        return place;
    }

    /** What stands there now, as typed; "" if nothing does. */
    public String now() {
        return now;
    }
}
