/**
 * Shortening a line a little at a time: how much of what remains to cut now, and when to stop. A
 * line cannot be made longer, so every rule here errs towards leaving it too long.
 */
package halfwidth.localizer.cut;
