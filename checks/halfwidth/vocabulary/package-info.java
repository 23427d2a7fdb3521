/** The words of the page language: what an action can be, and how an entry is refused. */
package halfwidth.vocabulary;
