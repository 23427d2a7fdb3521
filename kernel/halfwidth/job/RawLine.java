package halfwidth.job;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of a journal's file, not yet read.
 *
 * @param place its line in the file, from 1
 * @param from its first byte
 * @param to behind its last byte, before the line end
 * @param next the first byte of the next line
 * @param ended whether it has a line end
 */
record RawLine(int place, int from, int to, int next, boolean ended) {

    /** Cuts a file at LF and CR LF. A lone CR is no line end, so that it cannot hide. */
    static List<RawLine> cut(byte[] bytes) {
        List<RawLine> lines = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                int to = i > from && bytes[i - 1] == '\r' ? i - 1 : i;
                lines.add(new RawLine(lines.size() + 1, from, to, i + 1, true));
                from = i + 1;
            }
        }
        if (from < bytes.length) {
            lines.add(new RawLine(lines.size() + 1, from, bytes.length, bytes.length, false));
        }
        return lines;
    }

    /** Where its text ends and the checks begin. */
    private int textEnd() {
        return to - Chain.LENGTH;
    }

    /** Writes its text without the checks at its end, as a line. */
    void write(byte[] bytes, ByteArrayOutputStream out) {
        out.write(bytes, from, textEnd() - from);
        out.write('\n');
    }

    /** The checks at its end, each after its comma. */
    String end(byte[] bytes) {
        return string(bytes, textEnd(), to);
    }

    String all(byte[] bytes) {
        return string(bytes, from, to);
    }

    private static String string(byte[] bytes, int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.UTF_8);
    }

    /** Whether it is as it was written, by its own check. */
    boolean intact(byte[] bytes, Chain chain) {
        return textEnd() > from
                && bytes[textEnd()] == ','
                && bytes[textEnd() + Chain.LENGTH / 2] == ','
                && chain.holds(bytes, from, textEnd());
    }

    /** Whether it is tied to the line before it; both are intact. */
    boolean follows(RawLine before, byte[] bytes, Chain chain) {
        return chain.ties(bytes, before.textEnd(), textEnd());
    }
}
