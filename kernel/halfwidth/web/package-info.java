/**
 * The sheet on the screen: {@link halfwidth.web.Screen} serves the pages of a job to a browser on
 * the same machine, and to nobody else.
 */
package halfwidth.web;
