/**
 * What pages decide, under thousands of sets of readings as a field gives them: right ones, the
 * wrong tone, sides exchanged, outliers, blanks, cuts past the end, adapters without effect. Each
 * decision is judged by a rule of a few lines that is written from the page's prose and shares no
 * code with it.
 */
package halfwidth.decisions;
