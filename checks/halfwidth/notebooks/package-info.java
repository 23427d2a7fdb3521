/** The worked pages in use: filled in as a crew would, and held against figures from outside. */
package halfwidth.notebooks;
