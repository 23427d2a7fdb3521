/**
 * Coaxial lines: phase constant, electrical and physical length, lengths as they are cut, phases
 * known modulo a turn, and what a phase slope over frequency tells of the turns.
 */
package halfwidth.localizer.line;
