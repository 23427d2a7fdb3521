/**
 * What commands found, for other programs: JSON (RFC 8259) of the members that the README lists.
 * Each class shapes one command's; {@link halfwidth.json.JsonText} alone writes. A member is never
 * left out: what is not there is null, or an empty list.
 */
package halfwidth.json;
