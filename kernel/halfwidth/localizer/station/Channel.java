package halfwidth.localizer.station;

import halfwidth.localizer.array.FeedPath;

/** What one carrier is for. */
public enum Channel {
    /** The course signal. */
    COURSE,
    /** The clearance signal on its own carrier. */
    CLEARANCE;

    static Channel of(FeedPath path) {
        return values()[path.carrier()];
    }
}
