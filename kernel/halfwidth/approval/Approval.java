package halfwidth.approval;

import halfwidth.approval.Event.Acknowledged;
import halfwidth.approval.Event.Answered;
import halfwidth.approval.Event.SentBack;
import halfwidth.approval.Event.Signed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What all that was said about a sheet comes to for what it shows now. A signature counts for just
 * the content it was given for, and not at all if its key does not fit. A sheet that was sent back
 * is neither prepared nor checked until each remark is answered, by a text or by other content that
 * was prepared anew. Sending it back, and preparing it again, withdraw a check that was given
 * before.
 *
 * @param content the fingerprint of what it shows now
 * @param prepared who prepared just this content
 * @param checked who checked just this content
 * @param sentBack what is not answered yet
 * @param last the last signatures of all, of whatever content: one of each role at most
 * @param acknowledged who has looked at which difference from the shipped page
 */
public record Approval(
        String content,
        Optional<Signed> prepared,
        Optional<Signed> checked,
        List<SentBack> sentBack,
        List<Signed> last,
        List<Acknowledged> acknowledged) {
    /** Of a sheet that nobody has signed. */
    public static final Approval NONE = of(List.of(), "");

    public Approval {
        sentBack = List.copyOf(sentBack);
        last = List.copyOf(last);
        acknowledged = List.copyOf(acknowledged);
    }

    /**
     * What events come to.
     *
     * @param events all about one sheet, in order
     * @param content the fingerprint of what it shows now
     */
    public static Approval of(List<Event> events, String content) {
        List<SentBack> open =
                all(events, SentBack.class).filter(back -> !isAnswered(back, events)).toList();
        List<Signed> here =
                all(events, Signed.class)
                        .filter(signed -> open.isEmpty() && signed.content().equals(content))
                        .filter(signed -> !signed.key().isWrong())
                        .toList();
        Optional<Signed> prepared = last(here, Role.PREPARED);
        long withdrawn =
                Stream.concat(
                                prepared.stream(),
                                all(events, SentBack.class)
                                        .filter(back -> back.content().equals(content)))
                        .mapToLong(Event::line)
                        .max()
                        .orElse(-1);
        return new Approval(
                content,
                prepared,
                last(here, Role.CHECKED).filter(signed -> signed.line() > withdrawn),
                open,
                Stream.of(Role.values())
                        .flatMap(role -> last(all(events, Signed.class).toList(), role).stream())
                        .toList(),
                all(events, Acknowledged.class).toList());
    }

    private static <E extends Event> Stream<E> all(List<Event> events, Class<E> kind) {
        return events.stream().filter(kind::isInstance).map(kind::cast);
    }

    private static boolean isAnswered(SentBack back, List<Event> events) {
        boolean text = all(events, Answered.class).anyMatch(answer -> answer.to() == back.line());
        return text
                || all(events, Signed.class)
                        .filter(signed -> signed.role() == Role.PREPARED)
                        .filter(signed -> !signed.key().isWrong())
                        .filter(signed -> signed.line() > back.line())
                        .anyMatch(signed -> !signed.content().equals(back.content()));
    }

    private static Optional<Signed> last(List<Signed> signed, Role role) {
        return signed.stream()
                .filter(one -> one.role() == role)
                .max(Comparator.comparingLong(Signed::line));
    }

    /** The last signature in a role, of whatever content, if it is one at all. */
    Optional<Signed> last(Role role) {
        return last(last, role).filter(signed -> !signed.key().isWrong());
    }

    /** What is sent back at a field, table or result, or at a step as in {@code line 42}. */
    public List<SentBack> sentBackAt(String place) {
        return sentBack.stream().filter(back -> back.at().equals(place)).toList();
    }

    /**
     * Whether this answers something that was sent back.
     *
     * @param to the line of what is answered
     */
    public Decision answer(String by, long to, String text) {
        List<String> barred = new ArrayList<>();
        if (!Names.isName(by)) {
            barred.add(Rule.NO_NAME);
        }
        if (text.isBlank()) {
            barred.add("say what the answer is");
        }
        if (sentBack.stream().noneMatch(back -> back.line() == to)) {
            barred.add("that remark is answered already, or there is none of that number");
        }
        return Decision.barredBy(barred);
    }

    /** What heads the sheet and its record, by the name of its box. */
    public Map<String, String> heading() {
        Map<String, String> heading = new LinkedHashMap<>();
        signed().forEach(
                        signed -> {
                            String role = capital(signed.role().words());
                            heading.put(role + " by", signed.by());
                            if (signed.key().fits()) {
                                heading.put(role + " with key", signed.key().fingerprint());
                            }
                            heading.put("Date", signed.time().toLocalDate().toString());
                            if (!signed.despite().isEmpty()) {
                                heading.put(role + " despite", signed.despite());
                            }
                        });
        if (!sentBack.isEmpty()) {
            String words = sentBack.stream().map(SentBack::words).collect(Collectors.joining("; "));
            heading.put("Sent back by", words);
        }
        return heading;
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private Stream<Signed> signed() {
        return Stream.concat(prepared.stream(), checked.stream());
    }

    /** How it stands, each in a line for people; none where nobody has signed or sent back. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        sentBack.forEach(back -> words.add("sent back by " + back.words()));
        signed().forEach(signed -> words.add(words(signed)));
        last.stream()
                .filter(signed -> signed().noneMatch(now -> now.role() == signed.role()))
                .forEach(signed -> words.add(words(signed) + ", " + whyNot(signed)));
        return words;
    }

    /** Why a signature does not count for what the sheet shows now. */
    private String whyNot(Signed signed) {
        if (signed.key().isWrong()) {
            return "which does not count";
        }
        if (!signed.content().equals(content)) {
            return "for an earlier state";
        }
        return sentBack.isEmpty()
                ? "withdrawn since it was sent back or prepared again"
                : "not before that is answered";
    }

    private static String words(Signed signed) {
        String despite = signed.despite().isEmpty() ? "" : ", despite " + signed.despite();
        return "%s by %s, %s, %s%s"
                .formatted(
                        signed.role().words(),
                        signed.by(),
                        signed.time().toLocalDate(),
                        signed.key().words(),
                        despite);
    }
}
