package halfwidth.show;

/** Whether a result keeps its limits. */
public enum Verdict {
    MET("met"),
    NOT_MET("not met"),
    /** It has limits, or should have a value, but something is missing for a judgement. */
    NOT_JUDGED("not judged"),
    NO_LIMIT("no limit");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** How it is written for people. */
    public String words() {
        return words;
    }
}
