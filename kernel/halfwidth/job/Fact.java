package halfwidth.job;

import halfwidth.approval.Role;
import halfwidth.key.KeyMark;

/** What one line of the journal says. */
public sealed interface Fact {
    /** What it is about; the page is "" where it is about the whole job. */
    Visit visit();

    /**
     * A value was entered, or taken back.
     *
     * @param typed as typed; "" takes it back
     * @param understood the number in {@code unit}, the day as in 2026-06-12, or the words
     * @param unit of {@code understood}; "" where a unit makes no sense
     * @param replaced what was typed there before; "" if nothing was
     * @param reason why it is blank, as in {@code lost mark}; "" if it is not or none was given
     */
    record Value(
            Visit visit,
            Place place,
            String typed,
            String understood,
            String unit,
            String replaced,
            String reason)
            implements Fact {}

    /**
     * Something was taken back.
     *
     * @param undone the number of the first line of what was entered together
     */
    record Undo(Visit visit, long undone) implements Fact {}

    /**
     * An input takes its value from this visit of the other page from now on.
     *
     * @param input the input's name
     * @param from the name of the other page's visit
     */
    record Choice(Visit visit, String input, String from) implements Fact {}

    /**
     * The page was run; what it found follows on the next lines.
     *
     * @param outcome what came of the whole page
     * @param madeFrom the digest of the page's text and values
     */
    record Ran(Visit visit, Outcome outcome, String madeFrom) implements Fact {}

    /** A result that a run published. */
    record Found(Visit visit, Finding finding) implements Fact {}

    /**
     * A record was written.
     *
     * @param file its file in the folder {@code records}
     * @param digest SHA-256 of its bytes
     * @param content the fingerprint of what it shows; "" in lines of older programs
     */
    record Recorded(Visit visit, String file, String digest, String content) implements Fact {}

    /**
     * A record was signed.
     *
     * @param file its file in the folder {@code records}
     * @param digest SHA-256 of its content when it was signed
     * @param role as who it was signed
     * @param by who signed, as named; not always whose account the machine wrote it under
     * @param remark what the signer remarks; may be ""
     * @param content the fingerprint of what it showed; "" where it was signed without a key
     * @param mark what a key put under it, by {@link SignedText}
     */
    record Signed(
            Visit visit,
            String file,
            String digest,
            Role role,
            String by,
            String remark,
            String content,
            KeyMark mark)
            implements Fact {

        /** Signed with a name alone, as by programs that knew no keys. */
        public Signed(
                Visit visit, String file, String digest, Role role, String by, String remark) {
            this(visit, file, digest, role, by, remark, "", KeyMark.NONE);
        }

        /** The same with what a key put under it. */
        public Signed with(KeyMark put) {
            return new Signed(visit, file, digest, role, by, remark, content, put);
        }
    }

    /**
     * Somebody agreed that the page runs outside the bounds of page code.
     *
     * @param digest of the page's text
     * @param by who agreed, as named
     * @param needs what the page says that it needs
     */
    record Agreed(Visit visit, String digest, String by, String needs) implements Fact {}

    /** Somebody noted something. */
    record Noted(Visit visit, String text) implements Fact {}

    /**
     * What stood against the signature on the line before.
     *
     * @param against what it was, in words
     * @param reason why it was signed as checked all the same; "" for who prepared it
     */
    record Despite(Visit visit, String file, String by, String against, String reason)
            implements Fact {}

    /**
     * A sheet was sent back.
     *
     * @param at the field, table or result, or {@code line 42} for a step; "" for the whole sheet
     * @param by who sent it back, as named
     * @param content the fingerprint of what it showed
     */
    record SentBack(Visit visit, String at, String by, String content, String remark)
            implements Fact {}

    /**
     * Somebody answered to what was sent back.
     *
     * @param to the number of its line
     */
    record Answered(Visit visit, long to, String by, String text) implements Fact {}

    /**
     * Somebody looked at what an adapted page has otherwise than the shipped one.
     *
     * @param difference its digest
     */
    record Acknowledged(Visit visit, String by, String difference) implements Fact {}
}
