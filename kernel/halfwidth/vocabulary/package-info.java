/**
 * The words of the page language beyond plain Java: what a page says of what to do next, and how it
 * refuses what was entered. Pages and the kernel share them; they know neither a page nor a trade.
 */
package halfwidth.vocabulary;
