package halfwidth.run;

/** Says that a page could not be run or drawn; the message is for the person at the screen. */
public final class PageLost extends RuntimeException {
    PageLost(String message) {
        super(message);
    }
}
