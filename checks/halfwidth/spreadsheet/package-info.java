/** Files as spreadsheets write them, made here from what is known of their formats. */
package halfwidth.spreadsheet;
