/**
 * Files as spreadsheets write and read them. {@link halfwidth.spreadsheet.SpreadsheetFile} makes
 * rows of cells out of bytes, be they separated text in whatever dialect or a workbook; {@link
 * halfwidth.spreadsheet.CsvText} writes text that a spreadsheet may open without running any of it.
 * What cells mean is not known here.
 */
package halfwidth.spreadsheet;
