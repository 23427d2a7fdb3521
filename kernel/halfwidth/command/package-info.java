/** The command line: pages are run and checked, jobs kept, records verified. */
package halfwidth.command;
