package halfwidth.show;

/**
 * A verdict with its why.
 *
 * @param reason why there is no judgement, "" if there is one
 * @param remark what to mind beside the verdict, as a limit within the uncertainty; "" if nothing
 */
public record Ruling(Verdict verdict, String reason, String remark) {

    static Ruling blank(String reason) {
        return new Ruling(Verdict.BLANK, reason, "");
    }

    static Ruling notJudged(String reason) {
        return new Ruling(Verdict.NOT_JUDGED, reason, "");
    }

    /** The verdict in words with its why, as in {@code not judged: waiting for r90}. */
    public String words() {
        if (verdict == Verdict.BLANK) {
            return reason;
        }
        if (!reason.isEmpty()) {
            return verdict.words() + ": " + reason;
        }
        return remark.isEmpty() ? verdict.words() : verdict.words() + ", " + remark;
    }

    /** Why there is no judgement, or what to mind; "" if neither. */
    String why() {
        return reason.isEmpty() ? remark : reason;
    }
}
