package halfwidth.run;

/** Says that a worker ended, or had to be ended, before it answered. */
final class WorkerLost extends Exception {
    private final int statement;
    private final String reason;
    private final String advice;

    /**
     * @param statement the index of the statement that was running, below 0 if none was
     * @param reason what happened, in a technician's words
     */
    WorkerLost(int statement, String reason, String advice) {
        super(reason);
        this.statement = statement;
        this.reason = reason;
        this.advice = advice;
    }

    /** The same loss, where a person wanted it. */
    WorkerLost byHand() {
        return new WorkerLost(
                statement,
                "It was stopped by hand.",
                "Change a value, or the step itself if it can never end.");
    }

    int statement() {
        return statement;
    }

    String reason() {
        return reason;
    }

    String advice() {
        return advice;
    }
}
