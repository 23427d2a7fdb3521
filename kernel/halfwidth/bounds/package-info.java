/**
 * The bounds of page code: {@link halfwidth.bounds.Bounds} holds the compiled classes of a page's
 * steps against the list in {@code bounds.txt} before any of them is loaded.
 */
package halfwidth.bounds;
