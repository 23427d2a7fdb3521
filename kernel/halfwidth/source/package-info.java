/**
 * Java source in memory for the JDK's compiler: parsed, or prepared for finding out what its names
 * are. Nothing here generates code or knows what a page is.
 */
package halfwidth.source;
