package halfwidth.proof;

/** Says that units do not fit, naming both. */
final class Refuted extends RuntimeException {
    Refuted(String message) {
        super(message);
    }
}
