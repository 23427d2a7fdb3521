package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.page.Field;
import halfwidth.page.Part;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import halfwidth.value.Kind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The fields of one block: label, what it accepts, the entry, and how it was understood. */
record FieldList(Scene scene, Html html) {

    void write(Part.Inputs inputs) {
        html.open("div", "class", "fields numbered");
        Marks.line(html, inputs.line());
        inputs.fields().forEach(this::field);
        html.close().line();
    }

    private void field(Field field) {
        String id = "f-" + field.name();
        Optional<Trouble> trouble = scene.trouble(Place.input(field.name()));
        html.open("div", "class", "field");
        html.element("label", field.label(), "for", id);
        html.open("div", "class", "entry");
        if (field.kind() instanceof Kind.Choice choice) {
            choice(field, choice.options());
        } else {
            String[] attributes = attributes(field, trouble);
            html.single("input", Marks.with(attributes, "type", "text", "value", shown(field)));
        }
        if (!Marks.unit(field.unit()).isEmpty()) {
            html.element("span", Marks.unit(field.unit()), "class", "unit");
        }
        html.close();
        said(field, trouble);
        accepted(field);
        new SentBackNotes(scene, html).partAt(field.name());
        html.close().line();
    }

    private String shown(Field field) {
        return scene.trouble(Place.input(field.name()))
                .map(Trouble::typed)
                .orElse(scene.typed(field));
    }

    private String[] attributes(Field field, Optional<Trouble> trouble) {
        return new String[] {
            "id",
            "f-" + field.name(),
            "data-entry",
            "",
            "data-name",
            field.name(),
            "data-seen",
            scene.typed(field),
            "placeholder",
            scene.unlessTyped(field),
            "title",
            scene.inFull(field),
            "aria-describedby",
            "s-" + field.name() + " a-" + field.name(),
            "aria-invalid",
            trouble.isPresent() ? "true" : "false",
            "data-kept",
            trouble.filter(Trouble::kept).isPresent() ? "true" : "false",
            "autocomplete",
            "off",
            "spellcheck",
            "false"
        };
    }

    private void choice(Field field, List<String> options) {
        String chosen = scene.typed(field);
        html.open("select", attributes(field, scene.trouble(Place.input(field.name()))));
        option("", "", chosen.isEmpty());
        options.forEach(word -> option(word, word, word.equalsIgnoreCase(chosen.strip())));
        html.close();
    }

    private void option(String value, String text, boolean chosen) {
        String[] attributes = {"value", value};
        html.element(
                "option",
                text,
                chosen ? Marks.with(attributes, "selected", "selected") : attributes);
    }

    private void said(Field field, Optional<Trouble> trouble) {
        String[] attributes = {"id", "s-" + field.name(), "data-part", "", "data-of", field.name()};
        html.open(
                "p",
                Marks.with(attributes, "class", trouble.isPresent() ? "said refused" : "said"));
        if (trouble.isPresent()) {
            html.text(trouble.get().message());
            trouble.get().choices(html);
        } else {
            html.text(scene.understood(field));
        }
        html.close();
    }

    private void accepted(Field field) {
        html.open("p", "class", "accepted", "id", "a-" + field.name());
        String accepted = field.kind() instanceof Kind.Choice ? "" : SheetParts.accepted(field);
        String optional = field.optional() ? "optional" : "";
        html.text(
                        Stream.of(accepted, optional)
                                .filter(words -> !words.isEmpty())
                                .collect(Collectors.joining("; ")))
                .close();
    }
}
