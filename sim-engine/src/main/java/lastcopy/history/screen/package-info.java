/**
 * Decides in most histories, without an event and without an allocation, that nothing is lost in
 * them.
 *
 * <h2>Speed</h2>
 *
 * <p>64 histories in a row are decided at once ({@link lastcopy.history.screen.HistoryLanes}), so
 * that a processor overlaps the draws of one with those of the next: first failures and first
 * shocks are uniforms compared with limits computed once; sets that only fail and heal are reckoned
 * in short loops over all their drives ({@link lastcopy.history.screen.LoneSet}, {@link
 * lastcopy.history.screen.DriveLanes}, {@link lastcopy.history.screen.Downtimes}); sets whose
 * drives matter to each other (strain, a batch, planned swaps, read errors) are played alone
 * ({@link lastcopy.history.screen.PlayedSet}); and then, history by history, one outage with
 * nothing on it that is nowhere else ({@link lastcopy.history.screen.LoneOutage}). These keep
 * primitive arrays: an object a drive would cost what the screen saves.
 *
 * <p>It decides by a list of what it reckons with ({@link lastcopy.history.plan.Effect}): what a
 * mechanism does not say, or says and no class here reckons with, is left to the event by event
 * engine. In doubt it says no, and the history is played in full; every draw is keyed by what it is
 * for, so both see the same luck.
 *
 * <h2>Where a drive failure is sampled</h2>
 *
 * <p>A drive's life is one unit exponential, the budget of {@code Draws.budget}, against the hazard
 * that its law runs up. That is spelled four times, with the same key and the same sums: in {@code
 * hazard.HazardClock}, where factors may change at any time; in {@code PlayedSet}, the same for a
 * set by itself without the clocks' bookkeeping of a bias; in {@code DriveLanes}, for the same
 * drive of 64 histories at once, without a branch; and in {@code LoneOutage}, as one comparison.
 * One function for all would hold the screen to the pace of the engine. {@code WholeModelTest} and
 * {@code LanesTest} hold each against the engine, to the last bit of what is drawn.
 */
package lastcopy.history.screen;
