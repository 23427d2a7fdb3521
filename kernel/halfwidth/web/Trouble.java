package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.show.Html;

/**
 * Why a value that was just typed was not entered.
 *
 * @param typed what was typed; it stays in its place
 * @param message what is wrong, and what to do
 * @param conflict whether somebody else changed the value meanwhile
 */
record Trouble(Place place, String typed, String message, boolean conflict) {

    /** What a person can do about a value that was changed meanwhile. */
    void choices(Html html) {
        if (conflict) {
            html.element("button", "Enter mine", "type", "button", "data-do", "mine");
            html.element("button", "Keep that", "type", "button", "data-do", "theirs");
        }
    }
}
