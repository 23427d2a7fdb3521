package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.show.Html;

/**
 * Why a value that was just typed was not entered, or why the page cannot calculate with one that
 * was.
 *
 * @param typed what was typed; it stays in its place
 * @param message what is wrong, and what to do
 * @param conflict whether somebody else changed the value meanwhile
 * @param kept whether the value is entered all the same, and only the page refuses it
 */
record Trouble(Place place, String typed, String message, boolean conflict, boolean kept) {
    /** A value that was not entered. */
    Trouble(Place place, String typed, String message, boolean conflict) {
        this(place, typed, message, conflict, false);
    }

    /** What a person can do about a value that was changed meanwhile. */
    void choices(Html html) {
        if (conflict) {
            html.element("button", "Enter mine", "type", "button", "data-do", "mine");
            html.element("button", "Keep that", "type", "button", "data-do", "theirs");
        }
    }
}
