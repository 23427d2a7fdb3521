package halfwidth.web;

/** Says that a request is not answered; the message is for the person at the screen. */
final class Refusal extends RuntimeException {
    private final int status;

    /**
     * @param status of HTTP, 400 to 499
     */
    Refusal(int status, String message) {
        super(message);
        this.status = status;
    }

    int status() {
        return status;
    }
}
