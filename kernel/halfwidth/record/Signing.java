package halfwidth.record;

import halfwidth.approval.Decision;
import halfwidth.approval.Role;

/**
 * A signature as somebody wants to give it.
 *
 * @param by who signs, as named
 * @param remark may be ""
 * @param seen whether the signer has looked at what differs from the shipped page
 * @param override why it is to be signed as checked whatever stands against it; "" for no override
 */
public record Signing(Role role, String by, String remark, boolean seen, String override) {
    public Signing {
        by = by.strip();
        remark = remark.strip();
        override = override.strip();
    }

    /** Why it was signed as checked whatever stood against it; "" if nothing did. */
    String reason(Decision decision) {
        return role == Role.CHECKED && !decision.against().isEmpty() ? override : "";
    }

    /** The remark; a reason for an override that was not needed is one. */
    String remark(Decision decision) {
        return remark.isEmpty() && decision.against().isEmpty() ? override : remark;
    }
}
