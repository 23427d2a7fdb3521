/**
 * Who prepared, checked or sent back a sheet, and whether that may be and still counts. It knows
 * neither pages nor files: others tell it the facts and ask.
 */
package halfwidth.approval;
