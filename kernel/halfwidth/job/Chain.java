package halfwidth.job;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The checks at the end of a journal line, as in {@code …,3f9a0c1d2e4b,90ab12cd34ef}: the first is
 * of the line alone and tells that it was altered, the second ties it to the line before and tells
 * that one was removed, added or moved. They are against accidents, not against forgery: who
 * rewrites a whole journal can compute them too.
 */
final class Chain {
    /** Twelve hexadecimal digits: one altered line in 2^48 would pass. */
    private static final int DIGITS = 12;

    /** The length of what is put behind a line's text: a comma and a check, twice. */
    static final int LENGTH = 2 * (DIGITS + 1);

    /** What the first line is tied to. */
    static final String START = "0".repeat(DIGITS);

    private final MessageDigest sha = sha256();

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The check of a line alone. */
    String own(byte[] text, int from, int to) {
        sha.update(text, from, to - from);
        return HexFormat.of().formatHex(sha.digest(), 0, DIGITS / 2);
    }

    /** Whether the check of a line alone stands behind its text and a comma. */
    boolean holds(byte[] file, int from, int to) {
        sha.update(file, from, to - from);
        return digestStandsAt(file, to + 1);
    }

    /** Whether a line's text, which ends there, is tied to that of the line before. */
    boolean ties(byte[] file, int before, int to) {
        sha.update(file, before + 1 + DIGITS + 1, DIGITS);
        sha.update(file, to + 1, DIGITS);
        return digestStandsAt(file, to + 1 + DIGITS + 1);
    }

    private boolean digestStandsAt(byte[] file, int place) {
        byte[] digest = sha.digest();
        for (int i = 0; i < DIGITS; i++) {
            int half = i % 2 == 0 ? digest[i / 2] >> 4 : digest[i / 2];
            if (file[place + i] != Character.forDigit(half & 0xf, 16)) {
                return false;
            }
        }
        return true;
    }

    /** The check that ties a line to the one before. */
    String tied(String before, String own) {
        byte[] both = (before + own).getBytes(StandardCharsets.US_ASCII);
        return own(both, 0, both.length);
    }

    /** The check that a line ends with and that the next one is tied to. */
    static String last(String end) {
        return end.substring(end.length() - DIGITS);
    }

    /** What is put behind a line's text. */
    String end(String before, byte[] text) {
        String own = own(text, 0, text.length);
        return "," + own + "," + tied(before, own);
    }
}
