/** Coaxial lines: phase constant, electrical and physical length, phases known modulo a turn. */
package halfwidth.localizer.line;
