package halfwidth.page;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a text file: UTF-8, with any line ending, with or without a byte order mark. */
final class SourceText {
    private static final int MOST_BYTES = 2_000_000;

    /** The line of a problem that is in none. */
    private static final int WHOLE = 0;

    private SourceText() {}

    /**
     * Reads a file.
     *
     * @throws PageRefused if it is missing, too large or not UTF-8
     */
    static String read(Path file) {
        Problems problems = new Problems(file);
        String text = "";
        try {
            long size = Files.size(file);
            if (size > MOST_BYTES) {
                problems.add(WHOLE, size + " bytes are too many; at most " + MOST_BYTES);
            } else {
                text = decoded(Files.readAllBytes(file), problems);
            }
        } catch (NoSuchFileException missing) {
            problems.add(WHOLE, "there is no such file");
        } catch (IOException unreadable) {
            problems.add(WHOLE, "cannot be read: " + unreadable);
        }
        problems.refuseIfAny();
        return text;
    }

    private static String decoded(byte[] bytes, Problems problems) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            long ends = withPlainLines(text.toString()).chars().filter(c -> c == '\n').count();
            problems.add((int) ends + 1, "has bytes that are not UTF-8; save it as UTF-8");
        }
        return text.toString();
    }

    /** The text without a byte order mark, each line ended by a line feed. */
    static String withPlainLines(String text) {
        String body = text.startsWith("\ufeff") ? text.substring(1) : text;
        return body.replace("\r\n", "\n").replace('\r', '\n');
    }
}
