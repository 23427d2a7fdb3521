package halfwidth.approval;

/**
 * What an adapted page has otherwise than the shipped one.
 *
 * @param digest tells it from any other difference
 * @param words which lines, for people
 */
public record PageDifference(String digest, String words) {}
