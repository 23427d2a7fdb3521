package halfwidth.spreadsheet;

import halfwidth.value.EntryRefused;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Bytes of a text file as text. UTF-8 is told by its bytes, UTF-16 by its mark alone. Anything else
 * is taken for code page 1252 only where that makes no difference: where each byte means the same
 * letter in all code pages that spreadsheets write in Europe and America. °, µ, ± and most accented
 * letters of western languages do; what another code page or an older system wrote has bytes among
 * them that do not, and is refused.
 *
 * @param remark what was decided in reading it; empty if it is plain UTF-8
 */
record DecodedText(String text, Optional<String> remark) {
    private static final String HOW =
            "save it in the spreadsheet as \"CSV UTF-8\" or as xlsx, and load that";

    private static final Charset WESTERN = Charset.forName("windows-1252");

    /** Central Europe, Turkey, the Baltic, and western Europe by its standard. */
    private static final List<Charset> OTHERS =
            List.of(
                    Charset.forName("windows-1250"),
                    Charset.forName("windows-1254"),
                    Charset.forName("windows-1257"),
                    StandardCharsets.ISO_8859_1);

    /**
     * Decodes a file.
     *
     * @param name how it is called in messages
     * @throws EntryRefused if it is no text, or its letters cannot be told, naming the line
     */
    static DecodedText of(String name, byte[] bytes) {
        if (starts(bytes, 0xff, 0xfe)) {
            return marked(name, bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xfe, 0xff)) {
            return marked(name, bytes, 2, StandardCharsets.UTF_16BE);
        }
        if (starts(bytes, 0xef, 0xbb, 0xbf)) {
            return marked(name, bytes, 3, StandardCharsets.UTF_8);
        }
        try {
            return new DecodedText(
                    plain(name, strict(bytes, 0, StandardCharsets.UTF_8)), Optional.empty());
        } catch (CharacterCodingException other) {
            return western(name, bytes);
        }
    }

    private static DecodedText marked(String name, byte[] bytes, int from, Charset charset) {
        try {
            return new DecodedText(plain(name, strict(bytes, from, charset)), Optional.empty());
        } catch (CharacterCodingException broken) {
            throw new EntryRefused(
                    "%s begins like %s and has bytes that are none; %s"
                            .formatted(name, charset.name(), HOW));
        }
    }

    private static DecodedText western(String name, byte[] bytes) {
        int line = 1;
        for (int i = 0; i < bytes.length; i++) {
            boolean ends = bytes[i] == '\n' || bytes[i] == '\r' && !follows(bytes, i, '\n');
            if (bytes[i] < 0 && !isSameEverywhere(bytes[i])) {
                throw new EntryRefused(
                        "%s:%d: has bytes that are not UTF-8 and may be more than one letter; %s"
                                .formatted(name, line, HOW));
            }
            line += ends ? 1 : 0;
        }
        String text = new String(bytes, WESTERN);
        return new DecodedText(
                plain(name, text), Optional.of("its letters read as code page 1252"));
    }

    private static boolean isSameEverywhere(byte letter) {
        byte[] alone = {letter};
        String here = new String(alone, WESTERN);
        return !Character.isISOControl(here.charAt(0))
                && OTHERS.stream().allMatch(other -> new String(alone, other).equals(here));
    }

    private static String plain(String name, String text) {
        if (text.indexOf('\0') >= 0) {
            throw new EntryRefused(name + " is no text that can be read here; " + HOW);
        }
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static String strict(byte[] bytes, int from, Charset charset)
            throws CharacterCodingException {
        CharBuffer text =
                charset.newDecoder().decode(ByteBuffer.wrap(bytes, from, bytes.length - from));
        return text.toString();
    }

    private static boolean follows(byte[] bytes, int at, char next) {
        return at + 1 < bytes.length && bytes[at + 1] == next;
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
