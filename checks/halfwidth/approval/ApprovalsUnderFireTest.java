package halfwidth.approval;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.approval.Event.Acknowledged;
import halfwidth.approval.Event.SentBack;
import halfwidth.approval.Event.Signed;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every combination of what a sheet can be like when somebody signs it, held against the rule in
 * words: <em>Checked</em> is refused while a check fails, a limit is not met or cannot be judged,
 * an adapted page is not looked at by who checks, nobody has prepared the sheet, it was changed
 * since, or the same person prepared it; a sentence as a reason overrides these, and nothing a
 * remark that is not answered. <em>Prepared</em> needs something filled in alone, and what is wrong
 * is told beside it.
 */
class ApprovalsUnderFireTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-06-12T12:00:00Z");
    private static final String REASON = "Flown and accepted by the inspector";

    /** How a sheet was prepared before it is signed now. */
    private enum Before {
        BY_NOBODY,
        BY_ANOTHER,
        /** Written otherwise: case, spaces and full stops name nobody else. */
        BY_THE_SAME,
        BY_ANOTHER_THEN_CHANGED,
        BY_THE_SAME_THEN_CHANGED
    }

    private enum Limit {
        MET,
        NOT_MET,
        NOT_JUDGED
    }

    private enum Origin {
        SHIPPED,
        ADAPTED,
        ADAPTED_AND_SEEN_NOW,
        ADAPTED_AND_SEEN_BEFORE,
        ADAPTED_AND_SEEN_BY_ANOTHER
    }

    private record Case(
            Role role,
            Before before,
            boolean fails,
            Limit limit,
            Origin origin,
            boolean sentBack,
            String reason) {

        /** How many things stand against a check, counted from the words of the rule. */
        int against() {
            int against = fails ? 1 : 0;
            against += limit == Limit.MET ? 0 : 1;
            boolean looked =
                    origin == Origin.SHIPPED
                            || origin == Origin.ADAPTED_AND_SEEN_NOW
                            || origin == Origin.ADAPTED_AND_SEEN_BEFORE;
            against += looked ? 0 : 1;
            against +=
                    switch (before) {
                        case BY_ANOTHER -> 0;
                        case BY_NOBODY, BY_THE_SAME, BY_ANOTHER_THEN_CHANGED -> 1;
                        case BY_THE_SAME_THEN_CHANGED -> 2;
                    };
            return against;
        }

        boolean allowed() {
            if (sentBack) {
                return false;
            }
            return role == Role.PREPARED || against() == 0 || reason.equals(REASON);
        }

        /** What is told beside the signature. */
        int told() {
            if (!allowed()) {
                return 0;
            }
            int wrong = (fails ? 1 : 0) + (limit == Limit.MET ? 0 : 1);
            return role == Role.PREPARED ? wrong : against();
        }
    }

    private static List<Case> all() {
        List<Case> all = new ArrayList<>();
        for (Role role : Role.values()) {
            for (Before before : Before.values()) {
                for (boolean fails : new boolean[] {false, true}) {
                    for (Limit limit : Limit.values()) {
                        for (Origin origin : Origin.values()) {
                            for (boolean back : new boolean[] {false, true}) {
                                for (String reason : List.of("", " . ", "ok", REASON)) {
                                    all.add(
                                            new Case(
                                                    role, before, fails, limit, origin, back,
                                                    reason));
                                }
                            }
                        }
                    }
                }
            }
        }
        return all;
    }

    private static Decision decision(Case one) {
        Rule rule = rule(one);
        return one.role == Role.PREPARED
                ? rule.prepare("A. Nother")
                : rule.check("A. Nother", one.origin == Origin.ADAPTED_AND_SEEN_NOW, one.reason);
    }

    private static Rule rule(Case one) {
        return new Rule(evidence(one), Approval.of(events(one), "now"), "now");
    }

    private static Evidence evidence(Case one) {
        return new Evidence(
                "now",
                true,
                one.fails ? List.of("line 25") : List.of(),
                List.of(),
                one.limit == Limit.NOT_MET ? List.of("Width") : List.of(),
                one.limit == Limit.NOT_JUDGED ? List.of("Width") : List.of(),
                one.origin == Origin.SHIPPED
                        ? Optional.empty()
                        : Optional.of(new PageDifference("text", "line 12")));
    }

    private static List<Event> events(Case one) {
        List<Event> events = new ArrayList<>();
        boolean same =
                one.before == Before.BY_THE_SAME || one.before == Before.BY_THE_SAME_THEN_CHANGED;
        if (one.before != Before.BY_NOBODY) {
            boolean now = one.before == Before.BY_ANOTHER || one.before == Before.BY_THE_SAME;
            String by = same ? " a.NOTHER" : "P. Reparer";
            events.add(signed(1, Role.PREPARED, by, now ? "now" : "before"));
        }
        if (one.origin == Origin.ADAPTED_AND_SEEN_BEFORE) {
            events.add(new Acknowledged(2, NOON, "A Nother", "text"));
        } else if (one.origin == Origin.ADAPTED_AND_SEEN_BY_ANOTHER) {
            events.add(new Acknowledged(2, NOON, "P. Reparer", "text"));
        }
        if (one.sentBack) {
            events.add(new SentBack(3, NOON, "R. Viewer", "now", "length", "which tape?"));
        }
        return events;
    }

    private static Signed signed(long line, Role role, String by, String content) {
        return new Signed(line, NOON, by, role, content, "r.html", "", "", "", Keyed.WITHOUT);
    }

    /** What the sheet and a verified record show once that is signed, by the same rule. */
    private static List<String> shownWrong(Case one, Decision decision) {
        List<String> wrong = new ArrayList<>();
        List<Event> events = new ArrayList<>(events(one));
        if (one.origin == Origin.ADAPTED_AND_SEEN_NOW) {
            events.add(new Acknowledged(8, NOON, "A. Nother", "text"));
        }
        String against = String.join("; ", decision.against());
        boolean overridden = one.role == Role.CHECKED && !decision.against().isEmpty();
        if (decision.isAllowed()) {
            events.add(
                    signed(9, one.role, "A. Nother", "now")
                            .despite(against, overridden ? one.reason : "", Keyed.WITHOUT));
        }
        Approval shown = Approval.of(events, "now");
        String box = one.role == Role.PREPARED ? "Prepared" : "Checked";
        String by = shown.heading().get(box + " by");
        if (decision.isAllowed() != "A. Nother".equals(by)) {
            wrong.add("the sheet shows " + box + " by " + by);
        }
        String despite = shown.heading().getOrDefault(box + " despite", "");
        if (decision.isAllowed() && (one.told() > 0) != !despite.isEmpty()) {
            wrong.add("the sheet tells \"" + despite + "\"");
        }
        if (overridden
                && !(despite.contains(REASON) && shown.words().toString().contains(REASON))) {
            wrong.add("the reason is not told");
        }
        boolean doubt = !new Rule(evidence(one), shown, "now").doubts().isEmpty();
        if (decision.isAllowed() && doubt) {
            wrong.add("it does not verify");
        }
        boolean other = Approval.of(events, "other").heading().containsKey(box + " by");
        if (other) {
            wrong.add("it heads other values");
        }
        return wrong;
    }

    @Test
    void everyCombinationIsAllowedShownAndVerifiedAsTheRuleSays() {
        List<String> disagreements = new ArrayList<>();
        for (Case one : all()) {
            Decision decision = decision(one);
            if (decision.isAllowed() != one.allowed()) {
                disagreements.add(one + ": " + decision);
            } else if (decision.against().size() != one.told()) {
                disagreements.add(one + " tells " + decision.against());
            }
            shownWrong(one, decision).forEach(wrong -> disagreements.add(one + ": " + wrong));
        }
        System.out.printf(
                "Approvals: %d combinations, %d disagreements%n",
                all().size(), disagreements.size());
        assertEquals(List.of(), disagreements.subList(0, Math.min(5, disagreements.size())));
    }
}
