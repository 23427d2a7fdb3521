package halfwidth.web;

import halfwidth.job.Visit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Answers what a browser of ours asks for. */
final class Answers {
    private final Notebook notebook;
    private final Map<String, BiFunction<Request, Visit, Reply>> looks = new LinkedHashMap<>();
    private final Map<String, BiFunction<Request, Visit, Reply>> acts = new LinkedHashMap<>();

    Answers(Notebook notebook) {
        this.notebook = notebook;
        FillAnswers filling = new FillAnswers(notebook);
        looks.put("/fill/", filling::page);
        looks.put("/plot/", filling::plot);
        looks.put("/csv/", filling::csv);
        looks.put("/results/", filling::results);
        looks.put("/record/", filling::record);
        looks.put("/progress/", filling::progress);
        ReviewAnswers reviewing = new ReviewAnswers(notebook);
        AdaptAnswers adapting = new AdaptAnswers(notebook);
        looks.put("/review/", reviewing::page);
        looks.put("/adapt/", adapting::page);
        TextAnswers texts = new TextAnswers(notebook);
        looks.put("/text/", texts::page);
        acts.put("/text/", texts::change);
        acts.put("/adapt/", adapting::sheet);
        acts.put("/try/", adapting::trial);
        acts.put("/keep/", adapting::keep);
        acts.put("/shipped/", adapting::shipped);
        acts.put("/version/", adapting::version);
        acts.put("/trace/", reviewing::traced);
        SigningAnswers signing = new SigningAnswers(notebook, reviewing);
        acts.put("/sign/", signing::sign);
        acts.put("/send-back/", signing::sendBack);
        acts.put("/answer/", signing::answer);
        acts.put("/fill/", filling::parts);
        acts.put("/enter/", filling::enter);
        acts.put("/read/", filling::read);
        acts.put("/load/", filling::load);
        acts.put("/last/", filling::last);
        acts.put("/undo/", filling::undo);
        acts.put("/stop/", filling::stop);
    }

    /**
     * @throws Refusal if there is no such thing
     */
    Reply to(Request request) {
        if (request.looks() && request.path().equals("/")) {
            return Reply.html(
                    Frame.ofJob(notebook, "The job", html -> new Overview(notebook, html).write()));
        }
        if (request.looks() && request.path().equals("/find")) {
            return Reply.html(new Found(notebook).html(request.query().find("words").orElse("")));
        }
        Optional<String> own = request.behind("/own/");
        if (request.looks() && own.isPresent()) {
            return Own.reply(own.get());
        }
        for (var one : (request.looks() ? looks : acts).entrySet()) {
            Optional<String> page = request.behind(one.getKey());
            if (page.isPresent()) {
                notebook.checkName(page.get());
                String visit = request.query().find("visit").orElse("").strip();
                return one.getValue().apply(request, new Visit(page.get(), visit));
            }
        }
        throw new Refusal(404, "There is nothing at " + request.path() + ".");
    }
}
