/**
 * One simulated history of a studio under one layout: {@link lastcopy.history.History} is all that
 * others use, with what it tells in {@code history.report} and the bias of {@code history.hazard}.
 *
 * <h2>How a history is simulated</h2>
 *
 * <p>The screen decides first whether a history can lose anything; if it cannot, the history is
 * done, without an allocation. Since every draw is keyed by what it is for, all others are played
 * from the start with the same luck: {@link lastcopy.history.EventLoop} takes the next timer from
 * the simulation clock and hands it to the mechanism that owns it ({@link
 * lastcopy.history.Mechanisms} makes them and connects them with their timers).
 *
 * <p>While each copy holds what the undisturbed course says, no offload, run, visit or card is
 * simulated. Where shoots come by the clock the course is recorded once for a layout by the engine
 * itself, from a history without luck; where they come at random it is reckoned from the shoots of
 * each plain history, if all copies are fed from the working copy and none in turns ({@code
 * plan.ReckonedCourse}). When something disturbs it, holdings are taken from the course at that
 * instant, and events are played until all is on the course again. {@code WholeModelTest} holds the
 * shortcut against event by event over random studios, and the {@code oracle} tests hold the engine
 * against a second simulator written from the model alone.
 *
 * <p>The packages, each of which uses only those after it: {@code screen} and {@code event} side by
 * side, {@code state}, {@code hazard}, {@code plan}, {@code report}.
 *
 * <p>"Days without redundancy" counts the failure of a drive or service, not a mishap of a place.
 * Other choices where the model leaves room are in the Javadoc of {@code History}.
 */
package lastcopy.history;
