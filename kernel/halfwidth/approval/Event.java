package halfwidth.approval;

import java.time.OffsetDateTime;

/** Something that was said about a sheet by name; later ones have greater numbers. */
public sealed interface Event {
    /** Counts with everything that is written. */
    long line();

    OffsetDateTime time();

    /** Who said it. */
    String by();

    /**
     * Somebody signed.
     *
     * @param content the fingerprint of what the sheet showed
     * @param record the record that was signed
     * @param against what stood against it at the time, in words; "" if nothing did
     * @param reason why it was signed as checked in spite of that; "" if nothing was overridden
     * @param remark may be ""
     * @param key what it was signed with besides the name
     */
    record Signed(
            long line,
            OffsetDateTime time,
            String by,
            Role role,
            String content,
            String record,
            String against,
            String reason,
            String remark,
            Keyed key)
            implements Event {

        /** The same signature for other content. */
        public Signed of(String other) {
            return new Signed(line, time, by, role, other, record, against, reason, remark, key);
        }

        /**
         * The same signature with what stood against it.
         *
         * @param with what it was signed with besides the name
         */
        public Signed despite(String what, String why, Keyed with) {
            return new Signed(line, time, by, role, content, record, what, why, remark, with);
        }

        /** As in {@code 2 checks fail: line 25, line 40. Override by R. Viewer: reason}; or "". */
        public String despite() {
            return reason.isEmpty()
                    ? against
                    : against + ". Override by %s: %s".formatted(by, reason);
        }
    }

    /**
     * Somebody sent the sheet back.
     *
     * @param content the fingerprint of what the sheet showed
     * @param at the field, table or result, or {@code line 42} for a step; "" for the whole sheet
     */
    record SentBack(
            long line, OffsetDateTime time, String by, String content, String at, String remark)
            implements Event {

        /** As in {@code R. Viewer, at line 42: which source?}. */
        public String words() {
            return by + (at.isEmpty() ? "" : ", at " + at) + ": " + remark;
        }
    }

    /**
     * Somebody answered to that.
     *
     * @param to the line of what is answered
     */
    record Answered(long line, OffsetDateTime time, String by, long to, String text)
            implements Event {}

    /**
     * Somebody looked at what an adapted page has otherwise than the shipped one.
     *
     * @param difference its digest
     */
    record Acknowledged(long line, OffsetDateTime time, String by, String difference)
            implements Event {}
}
