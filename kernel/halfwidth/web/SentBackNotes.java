package halfwidth.web;

import halfwidth.approval.Event.SentBack;
import halfwidth.show.Html;
import java.util.List;

/** What a reviewer sent back, at its place or with a field for the answer. */
record SentBackNotes(Scene scene, Html html) {

    /**
     * All that is not answered yet, each with a form to answer it.
     *
     * @param view the address of the view that it stands on
     */
    void open(String view) {
        for (SentBack back : scene.approval().sentBack()) {
            html.open("div", "class", "sent-back", "id", "back-" + back.line());
            said(back);
            html.open("form", "method", "post", "action", scene.address("/answer"));
            html.single("input", "type", "hidden", "name", "to", "value", "" + back.line());
            html.single("input", "type", "hidden", "name", "view", "value", view);
            field("name", "Your name");
            field("text", "Answer");
            html.element("button", "Answer").close().close().line();
        }
    }

    private void said(SentBack back) {
        html.open("p").element("strong", "Sent back by ");
        html.text(back.words() + " ");
        html.element("span", back.time().toLocalDate().toString(), "class", "small").close();
    }

    private void field(String name, String label) {
        html.open("label").text(label + " ");
        html.single(
                "input", "type", "text", "name", name, "required", "required", "maxlength", "500");
        html.close();
    }

    /** The remarks at a field, a table, a result or a step; nothing where there is none. */
    void at(String place) {
        List<SentBack> here = scene.approval().sentBackAt(place);
        for (SentBack back : here) {
            html.open("div", "class", "sent-back");
            said(back);
            html.close().line();
        }
    }

    /** The same as a part that comes and goes while somebody fills the sheet in. */
    void partAt(String place) {
        html.open("div", "id", "back-at-" + place, "data-part", "");
        at(place);
        html.close();
    }
}
