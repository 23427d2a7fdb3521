/** A job folder on disk: a station, and a journal of every value entered for its pages. */
package halfwidth.job;
