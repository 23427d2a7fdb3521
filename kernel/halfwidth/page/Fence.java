package halfwidth.page;

/**
 * A fenced block.
 *
 * @param line the line of its opening fence, 1-based
 * @param info what is written after the opening fence, its words one space apart
 * @param content the lines between the fences
 */
record Fence(int line, String info, String content) {
    /** The first line of its content, 1-based. */
    int start() {
        return line + 1;
    }

    /** Whether the page means something by it: all others are prose. */
    static boolean isMeant(String info) {
        return info.regionMatches(true, 0, "java", 0, 4)
                || info.regionMatches(true, 0, "csv", 0, 3);
    }

    /** Whether a line looks as if it opened such a block. */
    static boolean opens(String line) {
        String text = line.strip();
        boolean fenced = text.startsWith("```") || text.startsWith("~~~");
        return fenced && isMeant(text.replaceFirst("^[`~]+\\s*", ""));
    }

    static String tidy(String info) {
        return info == null ? "" : info.strip().replaceAll("\\s+", " ");
    }
}
