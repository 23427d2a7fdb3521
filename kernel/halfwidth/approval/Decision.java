package halfwidth.approval;

import java.util.List;

/**
 * Whether a sheet may be signed.
 *
 * @param refused why not, each in words; none if it may
 * @param overridable whether a stated reason would let it be
 * @param against what stands against the signature and is told beside it, each in words
 */
public record Decision(List<String> refused, boolean overridable, List<String> against) {
    public Decision {
        refused = List.copyOf(refused);
        against = List.copyOf(against);
    }

    /** Refused for these reasons, which nothing overrides; allowed if there are none. */
    static Decision barredBy(List<String> why) {
        return new Decision(why, false, List.of());
    }

    /** Refused unless somebody states a reason to override these. */
    static Decision overridable(List<String> why) {
        return new Decision(why, true, List.of());
    }

    static Decision allowed(List<String> against) {
        return new Decision(List.of(), false, against);
    }

    public boolean isAllowed() {
        return refused.isEmpty();
    }
}
