package halfwidth.job;

/** Says who is writing in a job folder, so that others may only read it meanwhile. */
public final class JobHeld extends JobRefused {
    JobHeld(String message) {
        super(message);
    }
}
