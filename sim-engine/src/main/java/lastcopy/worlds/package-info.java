/**
 * Rates that are not known (second-order simulation): a studio in many possible worlds, each a draw
 * of all unknowns that all layouts share, in each of which many histories are simulated. What is
 * not known and the sampling error of the simulation are kept apart.
 *
 * <ul>
 *   <li><b>Where a world is drawn</b>: {@link lastcopy.worlds.WorldPoints}, as points of the
 *       standard normal law; the scenario makes a studio of a point ({@link
 *       lastcopy.scenario.PossibleStudios}).
 *   <li><b>Where histories are simulated</b>: {@link lastcopy.worlds.WorldSimulation}, in sweeps
 *       ({@link lastcopy.worlds.Sweep}) of worlds; a world by {@link lastcopy.worlds.WorldTask}. A
 *       layout is compiled anew in each world, which costs as much as 100 to 300 histories, so that
 *       hundreds of worlds cost little.
 *   <li><b>Where an interval is computed</b>: {@link lastcopy.worlds.WidenedFigures}. 16 replicates
 *       of the worlds are independent; Student's interval of their means holds both the luck of
 *       histories and that of worlds.
 *   <li><b>Where a percentile is computed</b>: {@link lastcopy.worlds.WorldSpreads}, from surfaces
 *       ({@link lastcopy.worlds.surface}). The percentiles of the worlds' raw frequencies would
 *       also hold the noise of the histories in each world; a smooth surface through all of them
 *       does not (metamodels for nested simulation: Liu, Staum, Journal of Risk 12(3) (2010) 3-27;
 *       Barton, Nelson, Xie, INFORMS Journal on Computing 26 (2014) 74-87).
 *   <li><b>Rare losses</b>: a bias is tuned once, in a world in which every hazard is one standard
 *       deviation high, and multiplies the hazards of each world; a weight is by the world's own
 *       hazards, so that each world stays unbiased.
 * </ul>
 */
package lastcopy.worlds;
