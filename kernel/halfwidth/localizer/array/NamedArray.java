package halfwidth.localizer.array;

import java.io.IOException;
import java.io.Serializable;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * An array as a page's field names it, with the text of its file as it was then: who changes the
 * file later changes nothing of what was computed or recorded.
 *
 * @param name of an array that comes with the program, without an ending, as in {@code
 *     fourteen-two-carrier}, or else the path of a CSV file; {@code none} for no array
 * @param text of the file as {@link ArrayFile} describes it, with LF as line end; "" for no array
 */
public record NamedArray(String name, String text) implements Serializable {
    /** On Windows a path that begins so makes the system ask that machine, with a password. */
    private static final Pattern REMOTE = Pattern.compile("[/\\\\]{2}");

    /** No array. */
    public static final NamedArray NONE = new NamedArray("none", "");

    /** Another line end makes no other array. */
    public NamedArray {
        text = text.replace("\r\n", "\n").replace('\r', '\n');
    }

    /**
     * Reads the array of a name.
     *
     * @param named the name of a shipped array, or the path of a CSV file in UTF-8; a relative path
     *     counts from where the program was started
     * @return the array
     * @throws IllegalArgumentException if it is neither, listing the shipped ones, or the file is
     *     not as {@link ArrayFile} describes it, naming the line
     * @throws UncheckedIOException if the file cannot be read
     */
    public static NamedArray of(String named) {
        String name = named.strip();
        boolean shipped = isShipped(name);
        NamedArray array =
                new NamedArray(name, shipped ? ShippedArrays.text(name) : text(path(name)));
        array.model();
        return array;
    }

    /**
     * Tells whether an array of this name comes with the program, so that no file is read for it.
     *
     * @param name as in {@code fourteen-two-carrier}
     * @return whether there is one
     */
    public static boolean isShipped(String name) {
        return ShippedArrays.NAMES.contains(name);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read array file " + file, e);
        }
    }

    private static Path path(String name) {
        if (REMOTE.matcher(name).lookingAt()) {
            throw unknown(name, "a file on another machine is not fetched; copy it here");
        }
        try {
            Path path = Path.of(name).toAbsolutePath();
            if (Files.isRegularFile(path)) {
                return path;
            }
            throw unknown(name, "there is no file " + path);
        } catch (InvalidPathException e) {
            throw unknown(name, e.getReason());
        }
    }

    private static IllegalArgumentException unknown(String name, String why) {
        return new IllegalArgumentException(
                "array \""
                        + name
                        + "\" must be one of the shipped "
                        + String.join(", ", ShippedArrays.NAMES)
                        + ", or the path of a CSV file ("
                        + why
                        + ")");
    }

    /**
     * Tells whether no array is named.
     *
     * @return whether there is none
     */
    public boolean isNone() {
        return text.isEmpty();
    }

    /**
     * Returns the array that the text describes.
     *
     * @return the array
     * @throws IllegalArgumentException if there is none, or the text is not as {@link ArrayFile}
     *     describes it, naming the line
     */
    public ArrayModel model() {
        try {
            return ArrayFile.read(name, new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Its name. */
    @Override
    public String toString() {
        return name;
    }
}
