package halfwidth.approval;

import halfwidth.approval.Event.SentBack;
import halfwidth.approval.Event.Signed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Who may sign a sheet, and as what. Everything that signs, shows or verifies a signature asks
 * here.
 *
 * @param evidence what is to be signed
 * @param approval how that stands so far
 * @param now the fingerprint of what the sheet shows now, which may have been changed meanwhile
 */
public record Rule(Evidence evidence, Approval approval, String now) {
    static final String NO_NAME = "sign with a name";
    private static final String NOTHING =
            "nothing is filled in on this sheet, so there is nothing to sign yet";
    private static final String CHANGED =
            "the sheet shows something else by now; make a new record and sign that";

    /** What is wrong with the sheet bars nobody from preparing it, but stands beside the name. */
    public Decision prepare(String by) {
        List<String> barred = barred(by);
        approval.sentBack().stream()
                .filter(back -> back.content().equals(evidence.content()))
                .forEach(back -> barred.add(unanswered(back)));
        return barred.isEmpty() ? Decision.allowed(evidence.wrong()) : Decision.barredBy(barred);
    }

    /**
     * Whether it may be signed as checked.
     *
     * @param seen whether the signer states to have looked at what differs from the shipped page
     * @param reason for an override; "" for none
     */
    public Decision check(String by, boolean seen, String reason) {
        List<String> barred = barred(by);
        approval.sentBack().forEach(back -> barred.add(unanswered(back)));
        List<String> against = against(by, seen);
        if (!barred.isEmpty()) {
            barred.addAll(against);
            return Decision.barredBy(barred);
        }
        return against.isEmpty() || Names.isReason(reason)
                ? Decision.allowed(against)
                : Decision.overridable(against);
    }

    /** Whether it may be sent back. */
    public Decision sendBack(String by, String remark) {
        List<String> barred = barred(by);
        if (remark.isBlank()) {
            barred.add("say in a remark what is to be done");
        }
        return Decision.barredBy(barred);
    }

    /** What is against a check by anyone so far, without an override. */
    public List<String> against() {
        return against("", false);
    }

    /** Why a check that was signed does not count, or no more; none if it does or there is none. */
    public List<String> doubts() {
        Optional<Signed> checked = approval.checked();
        if (checked.isPresent()) {
            return check(checked.get().by(), false, checked.get().reason()).refused();
        }
        return approval.last(Role.CHECKED)
                .filter(signed -> signed.content().equals(evidence.content()))
                .filter(signed -> approval.sentBack().isEmpty())
                .map(signed -> List.of("the check is withdrawn; it has to be checked again"))
                .orElse(List.of());
    }

    private List<String> barred(String by) {
        List<String> barred = new ArrayList<>();
        if (!Names.isName(by)) {
            barred.add(NO_NAME);
        }
        if (!evidence.filledIn()) {
            barred.add(NOTHING);
        }
        if (!now.equals(evidence.content())) {
            barred.add(CHANGED);
        }
        return barred;
    }

    private static String unanswered(SentBack back) {
        return "it was sent back by " + back.words() + " - answer that first";
    }

    private List<String> against(String by, boolean seen) {
        List<String> against = new ArrayList<>(evidence.wrong());
        evidence.difference()
                .filter(difference -> !seen && !isAcknowledged(by, difference))
                .ifPresent(
                        difference ->
                                against.add(
                                        "the page is adapted and its difference from the shipped"
                                                + " one is not acknowledged: "
                                                + difference.words()));
        Optional<Signed> preparer = approval.prepared().or(() -> approval.last(Role.PREPARED));
        if (preparer.isEmpty()) {
            against.add("nobody has prepared it");
        }
        preparer.filter(signed -> !signed.content().equals(evidence.content()))
                .ifPresent(
                        signed ->
                                against.add(
                                        "a value, an uncertainty or the text was changed since %s"
                                                        .formatted(signed.by())
                                                + " prepared it"));
        preparer.filter(signed -> Names.same(signed.by(), by))
                .ifPresent(
                        signed ->
                                against.add(
                                        "%s prepared it; somebody else has to check it"
                                                .formatted(signed.by())));
        return against;
    }

    /** Looking at it for oneself is part of checking, so another's look does not count. */
    private boolean isAcknowledged(String by, PageDifference difference) {
        return approval.acknowledged().stream()
                .filter(look -> look.difference().equals(difference.digest()))
                .anyMatch(look -> Names.same(look.by(), by));
    }
}
