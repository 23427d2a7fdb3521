package halfwidth.plot;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes a picture as PNG (ISO/IEC 15948): 8 bits for each of red, green and blue, no filter. The
 * JDK's own writer tries five filters on each line, which takes longer than drawing a plot and
 * hardly makes one smaller.
 */
final class Png {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] EIGHT_BITS_RED_GREEN_BLUE = {8, 2, 0, 0, 0};
    private static final int CHANNELS = 3;

    private Png() {}

    /**
     * Encodes a picture.
     *
     * @param image of type {@link BufferedImage#TYPE_INT_RGB}
     */
    static byte[] of(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(image));
            chunk(out, "IDAT", compressed(lines(image)));
            chunk(out, "IEND", new byte[0]);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] header(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(image.getWidth());
        out.writeInt(image.getHeight());
        out.write(EIGHT_BITS_RED_GREEN_BLUE);
        return bytes.toByteArray();
    }

    /** Each line of the picture behind a 0, which says that it is not filtered. */
    private static byte[] lines(BufferedImage image) {
        int width = image.getWidth();
        byte[] bytes = new byte[image.getHeight() * (1 + CHANNELS * width)];
        int[] line = new int[width];
        int at = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRaster().getDataElements(0, y, width, 1, line);
            at++;
            for (int colour : line) {
                bytes[at++] = (byte) (colour >> 16);
                bytes[at++] = (byte) (colour >> 8);
                bytes[at++] = (byte) colour;
            }
        }
        return bytes;
    }

    private static byte[] compressed(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try {
            deflater.setInput(bytes);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] piece = new byte[1 << 16];
            while (!deflater.finished()) {
                out.write(piece, 0, deflater.deflate(piece));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) check.getValue());
    }
}
