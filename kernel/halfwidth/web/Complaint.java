package halfwidth.web;

import halfwidth.job.JobRefused;
import halfwidth.page.PageRefused;
import halfwidth.record.RecordRefused;
import halfwidth.run.PageLost;
import halfwidth.show.Html;
import halfwidth.value.EntryRefused;

/** Says why there is no answer: as a page to who looks, as plain text to a module of ours. */
final class Complaint {
    private static final int CONFLICT = 409;
    private static final int BROKEN = 500;

    private Complaint() {}

    static Reply of(Throwable refused, String method) {
        int status = status(refused);
        String message =
                status == BROKEN
                        ? "The program failed; please report this: " + refused
                        : refused.getMessage();
        return method.equals("GET") ? page(status, message) : Reply.text(status, message);
    }

    private static int status(Throwable refused) {
        if (refused instanceof Refusal refusal) {
            return refusal.status();
        }
        boolean ours =
                refused instanceof JobRefused
                        || refused instanceof PageRefused
                        || refused instanceof EntryRefused
                        || refused instanceof RecordRefused
                        || refused instanceof PageLost;
        return ours ? CONFLICT : BROKEN;
    }

    private static Reply page(int status, String message) {
        Html html = new Html();
        html.trusted("<!DOCTYPE html>\n").open("html", "lang", "en").open("head");
        html.single("meta", "charset", "utf-8").element("title", "Halfwidth");
        html.close().open("body").open("main").element("h1", "Not shown");
        html.element("pre", message).close().close().close();
        return Reply.html(status, html.toString());
    }
}
