package halfwidth.localizer.array;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The arrays that come with the program, on the class path wherever it is started. */
final class ShippedArrays {
    /** Named here, since the entries of a folder within a jar cannot be asked for everywhere. */
    static final List<String> NAMES =
            List.of("fourteen-two-carrier", "nine-uneven", "ten-one-carrier");

    private static final String FOLDER = "datasets/arrays/";

    private ShippedArrays() {}

    static String text(String name) {
        String resource = FOLDER + name + ".csv";
        ClassLoader classPath = ShippedArrays.class.getClassLoader();
        try (InputStream stream = classPath.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(resource + " is not on the class path");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
