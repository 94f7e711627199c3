/**
 * Choosing among many layouts of a studio: the cheapest whose chance of loss keeps a target, the
 * safest within a budget, and the front of cost against risk. {@link lastcopy.decide.Selection} is
 * the door.
 *
 * <p>Successive elimination with an indifference zone, by rounds of looks ({@code
 * lastcopy.decide.rule} says when what is settled). In each round every candidate that still
 * matters has its histories tripled, those of the same numbers for all, so that candidates share
 * their luck. What is beaten is left, usually after the first look; the rest goes on only as far as
 * an answer hangs on it.
 *
 * <ul>
 *   <li><b>The guarantee</b>: with the stated chance all answers are right together, each but for
 *       the zone. From histories as they fall the intervals are exact (Clopper, Pearson); where
 *       losses are too rare for those, and of costs, they rest on means that are near normal, with
 *       corrections for skewness and for how few weights a variance rests on.
 *   <li><b>Rare losses</b> are estimated from biased histories. A bias is tuned for one candidate
 *       and used for all that are built alike ({@link lastcopy.decide.Biases}): a weight is by a
 *       candidate's own hazards, so that each stays unbiased. Where it serves a candidate badly,
 *       one is tuned for it alone, with an error budget of its own.
 *   <li><b>Near twins</b>, whose own intervals would take long to come apart, are told alike by
 *       pairs of histories that share their luck ({@link lastcopy.decide.SharedLuck}): what loses
 *       with both says nothing, and hardly anything loses with one alone.
 *   <li><b>Memory</b>: a candidate has sums, and of its first histories which lose: a bit each, or
 *       of biased ones a weight for each loss, of fewer the more candidates there are. A layout is
 *       compiled anew for each piece of work, which costs as much as some hundred histories.
 *   <li><b>The same on any number of threads</b>: what is simulated follows from what was merged,
 *       in the order of the candidates.
 * </ul>
 */
package lastcopy.decide;
