package halfwidth.show;

/** Whether a result keeps its limits. */
public enum Verdict {
    MET("met"),
    NOT_MET("not met"),
    /** It has limits, or should have a value, but something is missing for a judgement. */
    NOT_JUDGED("not judged"),
    /** It rests on something optional that is left blank. */
    BLANK("blank"),
    NO_LIMIT("no limit"),
    /** An action: nothing may be done before what it names is settled. */
    HELD("held"),
    /** An action: there is something to do. */
    TO_DO("to do"),
    /** An action: nothing is left to do. */
    FINISHED("finished");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** How it is written for people. */
    public String words() {
        return words;
    }
}
