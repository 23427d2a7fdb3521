/**
 * The antenna array: elements on a line, the currents that feed them, faults, and the field they
 * make at any place.
 *
 * <p>Positions are along the array from its centre, which stands on the course line, positive to
 * the 150 Hz side: the right of a pilot on approach facing the array, the left of a crew standing
 * behind it. Currents and fields are phasors of the time factor exp(+jωt): a positive phase is an
 * advance. The field of an element is referred to the phase of a wave from the array's centre, so
 * the far field is Σ w<sub>n</sub> exp(j k x<sub>n</sub> sin θ) with the wave number k = 2π f/c.
 * CSB is the carrier with its sidebands, told by its carrier; SBO the sidebands only, told by the
 * peak of one tone, positive where 150 Hz is in phase with the carrier. SBO currents that are in
 * quadrature with the CSB, −90° on the 150 Hz side and +90° on the 90 Hz side, add up in phase with
 * it in the field. {@link halfwidth.localizer.array.ArrayModel} is the entry, {@link
 * halfwidth.localizer.array.ArrayFile} reads one.
 */
package halfwidth.localizer.array;
