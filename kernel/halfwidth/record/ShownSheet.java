package halfwidth.record;

import halfwidth.run.Outcome.Done;
import halfwidth.run.Shown;
import halfwidth.show.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The sheet that a record shows, compared letter by letter with the one that its attachments come
 * to when they are done again.
 *
 * @param how what came of it
 * @param words what differs, or why it was not compared; none where all is the same
 */
public record ShownSheet(How how, List<String> words) {
    /** What came of a comparison. */
    public enum How {
        /** Every letter and every dot is the same. */
        SAME,

        /** Something that is shown is not what it comes to. */
        DIFFERENT,

        /** Every letter is the same; a machine that draws otherwise has drawn the plots. */
        PLOTS_LEFT_OUT,

        /** Another program has made it. */
        NOT_COMPARED
    }

    private static final Pattern PICTURE =
            Pattern.compile("(?<=src=\"data:image/png;base64,)[^\"]*");

    /** How many differences are told, and how much of each. */
    private static final int MOST = 5;

    private static final int BEFORE = 20;
    private static final int LONGEST = 70;

    public ShownSheet {
        words = words.stream().map(OneLine::of).toList();
    }

    /**
     * Compares.
     *
     * @param again the sheet done again, with its plots drawn
     */
    static ShownSheet of(ReadRecord record, Sheet again) {
        if (!Build.ofProgram().equals(record.about().get("build"))) {
            String by = record.about().getOrDefault("program", "unknown");
            return new ShownSheet(
                    How.NOT_COMPARED,
                    List.of(
                            "made by another version of the program (%s): the shown sheet cannot be"
                                            .formatted(by)
                                    + " compared; read the results that are attached, not those"
                                    + " that are printed"));
        }
        String shown = record.text();
        String expected = RecordFile.html(again, record.contents()).replace("\r\n", "\n");
        if (shown.equals(expected)) {
            return new ShownSheet(How.SAME, List.of());
        }
        String drawn = record.about().getOrDefault("drawn by", "");
        if (hasPlots(again) && !drawn.equals(Build.ofDrawing())) {
            String blind = PICTURE.matcher(shown).replaceAll("");
            String blindAgain = PICTURE.matcher(expected).replaceAll("");
            return blind.equals(blindAgain)
                    ? new ShownSheet(
                            How.PLOTS_LEFT_OUT,
                            List.of(
                                    "the pictures of its plots were drawn on another system (%s)"
                                                    .formatted(drawn)
                                            + " and cannot be compared; all else was"))
                    : new ShownSheet(How.DIFFERENT, differences(blind, blindAgain));
        }
        return new ShownSheet(How.DIFFERENT, differences(shown, expected));
    }

    static boolean hasPlots(Sheet sheet) {
        return sheet.run().steps().stream()
                .anyMatch(
                        ran ->
                                ran.outcome() instanceof Done done
                                        && done.value() instanceof Shown.Picture);
    }

    private static List<String> differences(String shown, String expected) {
        List<String> ones = shown.lines().toList();
        List<String> others = expected.lines().toList();
        List<String> words = new ArrayList<>();
        // Where a line is more or less, all behind it differ: the first says enough.
        int most = ones.size() == others.size() ? MOST : 1;
        for (int i = 0; i < Math.max(ones.size(), others.size()) && words.size() < most; i++) {
            String one = i < ones.size() ? ones.get(i) : "";
            String other = i < others.size() ? others.get(i) : "";
            if (!one.equals(other)) {
                words.add(difference(i + 1, one, other));
            }
        }
        return words;
    }

    private static String difference(int line, String one, String other) {
        int at = 0;
        while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        int from = Math.max(0, at - BEFORE);
        return "line %s of the file shows \"%s\" where it comes to \"%s\""
                .formatted(line, piece(one, from), piece(other, from));
    }

    private static String piece(String line, int from) {
        String rest = line.substring(Math.min(from, line.length()));
        return rest.length() > LONGEST ? rest.substring(0, LONGEST) + "…" : rest;
    }
}
