package halfwidth.approval;

import java.util.Locale;

/** As who a sheet is signed. */
public enum Role {
    PREPARED,
    CHECKED;

    /** As it is written for people and in the journal. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String toString() {
        return words();
    }
}
