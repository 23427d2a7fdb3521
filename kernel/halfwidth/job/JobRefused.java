package halfwidth.job;

/** Says what is wrong with a job folder, where, and what to do. */
public class JobRefused extends RuntimeException {
    JobRefused(String message) {
        super(message);
    }
}
