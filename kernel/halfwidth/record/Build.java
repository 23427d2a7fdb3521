package halfwidth.record;

import halfwidth.job.Fingerprint;
import halfwidth.run.ProgramFiles;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What made a record, told so that it can be said whether this program on this machine would make
 * the same: a version alone is the same for every build of it.
 */
final class Build {
    /** The letters of a plot are the machine's; these are in any plot. */
    private static final String LETTERS = "Halfwidth 0123456789.-+ °µ DDM";

    private static final int LETTER_SIZE = 15;
    private static final int POINT = 6;

    private static String program;
    private static String drawing;

    private Build() {}

    /** Tells this program from any other that might write a sheet otherwise. */
    static synchronized String ofProgram() {
        if (program == null) {
            program = read();
        }
        return program;
    }

    private static String read() {
        try {
            Path place = ProgramFiles.program();
            if (Files.isRegularFile(place)) {
                return Fingerprint.of(Files.readAllBytes(place));
            }
            StringBuilder all = new StringBuilder();
            try (Stream<Path> files = Files.walk(place.resolve("halfwidth"))) {
                List<Path> sorted = files.filter(Files::isRegularFile).sorted().toList();
                for (Path file : sorted) {
                    all.append(Fingerprint.of(Files.readAllBytes(file)));
                }
            }
            return Fingerprint.of(all.toString());
        } catch (IOException e) {
            throw new UncheckedIOException("The program cannot be read", e);
        }
    }

    /** Tells a machine that might draw a plot in other dots: by its Java, and by its letters. */
    static synchronized String ofDrawing() {
        if (drawing == null) {
            String java = Runtime.version() + " " + System.getProperty("os.name");
            String system = java + " " + System.getProperty("os.arch");
            drawing = system + " " + Fingerprint.of(letters()).substring(0, 12);
        }
        return drawing;
    }

    private static String letters() {
        StringBuilder outlines = new StringBuilder();
        FontRenderContext context = new FontRenderContext(null, true, true);
        for (int style : new int[] {Font.PLAIN, Font.BOLD}) {
            Font font = new Font(Font.SANS_SERIF, style, LETTER_SIZE);
            double[] point = new double[POINT];
            PathIterator path =
                    font.createGlyphVector(context, LETTERS).getOutline().getPathIterator(null);
            for (; !path.isDone(); path.next()) {
                outlines.append(path.currentSegment(point)).append(Arrays.toString(point));
            }
        }
        return outlines.toString();
    }
}
