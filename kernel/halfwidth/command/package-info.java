/** The command line: list, run and check. */
package halfwidth.command;
