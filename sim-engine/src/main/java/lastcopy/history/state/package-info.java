/**
 * How things stand in a history at an instant. A {@link lastcopy.history.state.CopyState} is one
 * copy: its condition (whole, degraded, being filled again, spoilt, gone), what it holds and what
 * is on its way to it. It alone changes these, and it says what follows from what; why they change
 * is the business of the mechanisms in {@code history.event}. Nothing here draws luck or decides a
 * loss.
 */
package lastcopy.history.state;
