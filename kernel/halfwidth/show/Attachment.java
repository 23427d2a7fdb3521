package halfwidth.show;

/**
 * A text attached to a sheet as it is, for other programs and for who wants to see it.
 *
 * @param id by which programs find it: the id of the {@code pre} that holds it
 * @param title what a reader sees of it
 */
public record Attachment(String id, String title, String text) {}
