package halfwidth.spreadsheet;

import halfwidth.value.EntryRefused;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Packs a workbook anew from what was looked at, so that whoever parses it sees that and nothing
 * else: a zip can hold one list of its parts in front of them and another behind. Whatever is not
 * cells, as pictures and programs, is left out.
 */
final class CheckedParts {
    /** Unpacked: the cells of a workbook of two megabytes come to less. */
    private static final int MOST_UNPACKED = 40_000_000;

    private static final int MOST_PARTS = 1_000;

    private final String name;
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
    private final Set<String> seen = new HashSet<>();
    private int unpacked;

    private CheckedParts(String name) {
        this.name = name;
    }

    /**
     * Looks at every part.
     *
     * @param name how the file is called in messages
     * @return the workbook packed anew
     * @throws EntryRefused if it is no workbook, or one that no spreadsheet writes
     */
    static byte[] of(String name, byte[] bytes) {
        CheckedParts parts = new CheckedParts(name);
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes));
                ZipOutputStream anew = new ZipOutputStream(parts.packed)) {
            ZipEntry entry = zip.getNextEntry();
            while (entry != null) {
                parts.add(entry.getName(), zip, anew);
                entry = zip.getNextEntry();
            }
        } catch (IOException | IllegalArgumentException damaged) {
            throw new EntryRefused(
                    name
                            + " is damaged and cannot be unpacked ("
                            + damaged.getMessage()
                            + "); save it anew in the spreadsheet");
        }
        if (!parts.seen.contains("xl/workbook.xml")
                || !parts.seen.contains("[content_types].xml")) {
            throw new EntryRefused(
                    name + " is no xlsx workbook; save it in the spreadsheet as xlsx or CSV UTF-8");
        }
        return parts.packed.toByteArray();
    }

    private void add(String part, ZipInputStream zip, ZipOutputStream anew) throws IOException {
        String path = part.toLowerCase(Locale.ROOT).replaceFirst("^/", "");
        if (!seen.add(path) || seen.size() > MOST_PARTS) {
            throw unusual(seen.size() > MOST_PARTS ? "too many parts" : "a part twice, " + part);
        }
        byte[] content = zip.readNBytes(MOST_UNPACKED - unpacked + 1);
        unpacked += content.length;
        if (unpacked > MOST_UNPACKED) {
            throw new EntryRefused(
                    "%s unpacks to more than %d bytes; copy the readings into a workbook of their own"
                            .formatted(name, MOST_UNPACKED));
        }
        if (path.endsWith(".xml") || path.endsWith(".rels")) {
            CheckedXml.of(content)
                    .ifPresent(
                            wrong -> {
                                throw unusual(wrong + " in its part " + part);
                            });
            anew.putNextEntry(new ZipEntry(part));
            anew.write(content);
            anew.closeEntry();
        }
    }

    private EntryRefused unusual(String what) {
        return new EntryRefused(
                "%s has %s, which no spreadsheet writes; nothing of it is read. Save the readings anew as xlsx or CSV UTF-8"
                        .formatted(name, what));
    }
}
