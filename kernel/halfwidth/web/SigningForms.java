package halfwidth.web;

import halfwidth.approval.Event;
import halfwidth.approval.PageDifference;
import halfwidth.approval.Role;
import halfwidth.approval.Rule;
import halfwidth.record.SendingBack;
import halfwidth.show.Html;
import java.util.List;
import java.util.Optional;

/**
 * What was signed and sent back so far, and the ways to sign, to send back and to override.
 *
 * @param rule what may be signed as things are now
 * @param events all that was said about the sheet by name, in order
 */
record SigningForms(Scene scene, Rule rule, List<Event> events) {

    void write(Html html) {
        html.element("h2", "Signatures", "id", "signatures");
        events.forEach(event -> html.element("p", words(event)));
        if (!rule.evidence().filledIn()) {
            html.element(
                    "p", "Nothing is filled in on this sheet, so there is nothing to sign yet.");
            return;
        }
        html.element(
                "p",
                "Signing writes a record of this sheet as it is now, with the name in its heading,"
                        + " and notes it in the journal. It is not an electronic signature in law.",
                "class",
                "small");
        prepare(html);
        check(html);
        sendBack(html);
    }

    private static String words(Event event) {
        String what = "";
        if (event instanceof Event.Signed signed) {
            String despite = signed.despite().isEmpty() ? "" : ", despite " + signed.despite();
            String remark = signed.remark().isEmpty() ? "" : " " + signed.remark();
            what =
                    "%s: %s%s, %s. Record %s.%s"
                            .formatted(
                                    signed.role().words(),
                                    signed.by(),
                                    despite,
                                    signed.key().words(),
                                    signed.record(),
                                    remark);
        } else if (event instanceof Event.SentBack back) {
            what = "sent back: " + back.words();
        } else if (event instanceof Event.Answered answer) {
            what = "answered: %s: %s".formatted(answer.by(), answer.text());
        } else if (event instanceof Event.Acknowledged look) {
            what = "difference from the shipped page looked at: " + look.by();
        }
        return event.time() + " " + what;
    }

    private void prepare(Html html) {
        open(html, "prepare", "/sign", "Prepared");
        html.single("input", "type", "hidden", "name", "role", "value", Role.PREPARED.words());
        told(html, "This will stand beside the name:", rule.evidence().wrong());
        field(html, "name", "Name", true);
        field(html, "remark", "Remark", false);
        html.element("button", "Sign as prepared").close().line();
    }

    private void check(Html html) {
        open(html, "check", "/sign", "Checked");
        html.single("input", "type", "hidden", "name", "role", "value", Role.CHECKED.words());
        List<String> against = rule.against();
        told(html, "Refused, unless it is mended or overridden:", against);
        field(html, "name", "Name", true);
        field(html, "remark", "Remark", false);
        Optional<PageDifference> difference = rule.evidence().difference();
        if (difference.isPresent()) {
            html.open("label", "class", "tick");
            html.single("input", "type", "checkbox", "name", "seen");
            html.text(" I have looked at what differs from the shipped page: ");
            html.text(difference.get().words()).close();
        }
        field(html, "override", "Reason for an override, which will head the record", false);
        html.element("button", "Sign as checked").close().line();
    }

    private void sendBack(Html html) {
        open(html, "send-back", "/send-back", "Send back");
        field(html, "name", "Name", true);
        html.open("label").text("At ").open("select", "name", "at");
        html.element("option", "the whole sheet", "value", "");
        SendingBack.places(scene.sheet())
                .forEach(place -> html.element("option", place, "value", place));
        html.close().close();
        field(html, "remark", "Remark", true);
        html.element("button", "Send back").close().line();
    }

    private void open(Html html, String id, String view, String title) {
        html.open(
                "form", "method", "post", "action", scene.address(view), "class", "sign", "id", id);
        html.element("h3", title);
    }

    private static void told(Html html, String words, List<String> what) {
        if (!what.isEmpty()) {
            html.element("p", words).open("ul");
            what.forEach(one -> html.element("li", one));
            html.close();
        }
    }

    private static void field(Html html, String name, String label, boolean required) {
        html.open("label").text(label);
        String[] attributes = {"type", "text", "name", name, "maxlength", "500"};
        html.single(
                "input", required ? Marks.with(attributes, "required", "required") : attributes);
        html.close();
    }
}
