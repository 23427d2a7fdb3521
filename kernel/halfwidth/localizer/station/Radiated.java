package halfwidth.localizer.station;

import java.util.List;

/** Which signals a transmitter radiates while a reading is taken. */
public enum Radiated {
    /** Course only, clearance off. */
    COURSE(List.of(Channel.COURSE)),
    /** Clearance only, course off. */
    CLEARANCE(List.of(Channel.CLEARANCE)),
    /** All that the station has. */
    BOTH(List.of(Channel.COURSE, Channel.CLEARANCE));

    private final List<Channel> channels;

    Radiated(List<Channel> channels) {
        this.channels = channels;
    }

    List<Channel> channels() {
        return channels;
    }
}
