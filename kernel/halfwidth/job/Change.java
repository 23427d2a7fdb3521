package halfwidth.job;

import java.util.Optional;

/**
 * A value to be entered.
 *
 * @param typed as typed; "" takes the value back
 * @param believed what the person saw there, as typed, "" for nothing; absent to enter it whatever
 *     stands there
 * @param reason why it is blank, if it is
 */
public record Change(Place place, String typed, Optional<String> believed, String reason) {

    /** A value to be entered whatever stands there. */
    public static Change to(Place place, String typed) {
        return new Change(place, typed, Optional.empty(), "");
    }

    /** The same, to be refused unless what stands there is still what the person saw. */
    public Change seeing(String seen) {
        return new Change(place, typed, Optional.of(seen), reason);
    }
}
