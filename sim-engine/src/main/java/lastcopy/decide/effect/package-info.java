/**
 * What single changes of a layout do: {@link lastcopy.decide.effect.EffectMeasurement} is the door.
 * Each {@link lastcopy.decide.effect.Alternative} is simulated under the same seed and the same
 * numbers of histories as the layout as it is, so that a history of the one shares its luck with
 * that of the other and their difference is measured history by history.
 *
 * <ul>
 *   <li><b>Intervals of differences</b> ({@link lastcopy.interval.PairedDifferences}) hold all
 *       together with the stated confidence (Bonferroni: each at the error rate over their number),
 *       since the first of many is picked by its look. So no alternative without an effect is
 *       called better or worse in more than 5 of 100 studies at 95 %. Intervals of what an
 *       alternative loses or costs hold one by one, and are those of a comparison.
 *   <li><b>Ranks</b>: two alternatives are apart where the interval of their own paired difference,
 *       at the same error rate divided by the pairs that are looked at, does not hold 0.
 *   <li><b>Rare losses</b>: histories as they fall show nothing where one in thousands loses. Then
 *       one bias is tuned, for the layout as it is, and all alternatives that are built alike are
 *       simulated under it, with weights by their own hazards; so each stays unbiased, and pairs
 *       share their luck. One that is built otherwise, or that the shared bias does not serve, has
 *       a bias of its own, and is paired as far as luck allows.
 *   <li><b>The same on any number of threads</b>: decisions follow from merged chunks only; an end
 *       by the clock is where the clock says.
 * </ul>
 */
package lastcopy.decide.effect;
