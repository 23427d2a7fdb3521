/**
 * Keys that people sign with: a pair for each person, made when the person first signs and kept in
 * the user's home, and the mark that such a key leaves under a text. It knows neither jobs nor
 * sheets.
 */
package halfwidth.key;
