/**
 * What happens in a history, event by event: one class a mechanism, each of which is given the
 * parts that it uses. Here is what they share; the mechanisms are in {@code drive}, {@code feed},
 * {@code desk} and {@code copy}, each of which may use those before it. A mechanism changes the
 * {@code state} of copies and tells the {@link lastcopy.history.event.LossRule} what was removed;
 * only the rule declares footage lost. It says what it can do to a copy ({@link
 * lastcopy.history.event.Mechanism#effects}), without which no history is passed over by the
 * screen; and, since no offload, run, visit or card is simulated on the undisturbed course ({@link
 * lastcopy.history.event.CourseTracker}), how it takes up what it does when a history leaves the
 * course and how to tell that it may go back.
 */
package lastcopy.history.event;
