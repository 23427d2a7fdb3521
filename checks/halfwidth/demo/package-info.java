/**
 * One season of an invented station: a crew works page after page on a simulated station, and what
 * the pages found is held against the truth that only a test may ask for.
 */
package halfwidth.demo;
