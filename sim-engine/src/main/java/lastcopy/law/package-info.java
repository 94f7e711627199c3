/**
 * Lifetimes and delays as laws of chance: hazard, cumulative hazard, survival, and the inverse of
 * the survival given an age ({@link lastcopy.law.Law}). A law holds no generator: whoever draws
 * gives it a uniform number. Its forms are those of the scenario file, from {@link
 * lastcopy.law.Exponential} and {@link lastcopy.law.Weibull} to {@link lastcopy.law.ByAge} and
 * {@link lastcopy.law.Competing}. Ages and times are hours.
 */
package lastcopy.law;
