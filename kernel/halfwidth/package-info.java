/** The program: {@link halfwidth.Main} hands the command line to its commands. */
package halfwidth;
