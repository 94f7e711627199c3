/**
 * When luck strikes. Every source of it (the life of a drive, a process of shocks) is a clock: it
 * draws one unit exponential and happens when its hazard, times the factors on it, has used that up
 * ({@link lastcopy.history.hazard.Clocks}). Strain, frailty, a drive that is off and a bias are
 * such factors, so they may change at any time. Latent defects are reckoned only when somebody is
 * about to meet them.
 *
 * <p><b>Importance sampling</b> is done here: a {@link lastcopy.history.hazard.Bias} multiplies
 * hazards by group and level of trouble, and {@link lastcopy.history.hazard.Likelihood} keeps the
 * ratio that makes up for it (Heidelberger, Shahabuddin, Nicola, ACM TOMACS 4(2), 1994); what a
 * path did is counted in {@link lastcopy.history.hazard.PathStatistics}, from which {@code
 * simulate.rare} finds the bias by cross-entropy.
 */
package lastcopy.history.hazard;
