/**
 * What an event-driven simulation needs and no more: the {@link lastcopy.kernel.Agenda} of timers,
 * and {@link lastcopy.kernel.Priority}, the order of what falls due at one instant. It knows no
 * drives.
 */
package lastcopy.kernel;
