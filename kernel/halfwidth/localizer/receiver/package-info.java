/** A portable receiver against a known source: its errors, and the correction they call for. */
package halfwidth.localizer.receiver;
