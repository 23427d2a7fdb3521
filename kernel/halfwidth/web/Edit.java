package halfwidth.web;

import halfwidth.adapt.Draft;
import halfwidth.adapt.Place;

/**
 * A change of some lines of a page, as an engineer types it.
 *
 * @param how what becomes of the lines that are there
 * @param place those lines
 * @param typed the lines typed; none of them take the others out
 */
record Edit(How how, Place place, String typed) {
    enum How {
        /** They are taken out for what is typed. */
        REPLACE,
        /** They stay, and what is typed stands below. */
        AFTER
    }

    /**
     * Reads a change.
     *
     * @throws Refusal if it is malformed
     */
    static Edit of(Form form) {
        try {
            return new Edit(
                    form.get("how").equals("after") ? How.AFTER : How.REPLACE,
                    new Place(
                            form.number("first"),
                            form.number("last"),
                            form.get("fenced").equals("true")),
                    form.get("typed").replace("\r\n", "\n"));
        } catch (IllegalArgumentException malformed) {
            throw new Refusal(400, malformed.getMessage());
        }
    }

    /**
     * The page so changed.
     *
     * @throws Refusal if the page has no such lines
     */
    Draft on(Draft draft) {
        try {
            if (how == How.AFTER) {
                return typed.isBlank() ? draft : draft.insertAfter(place, typed);
            }
            return typed.isBlank() ? draft.remove(place) : draft.replace(place, typed);
        } catch (IllegalArgumentException elsewhere) {
            throw new Refusal(409, elsewhere.getMessage());
        }
    }

    /** The number of the first typed line in the changed page. */
    int firstLine() {
        return how == How.AFTER ? place.last() + 1 : place.first();
    }

    /** The number of the last typed line in the changed page. */
    int lastLine() {
        return firstLine() + (int) typed.chars().filter(letter -> letter == '\n').count();
    }
}
