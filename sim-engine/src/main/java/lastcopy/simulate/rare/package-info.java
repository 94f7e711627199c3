/**
 * Importance sampling: histories of one layout whose hazards are biased towards losses, each
 * weighted by its likelihood ratio. {@link lastcopy.simulate.rare.Pilot} says whether that pays,
 * {@link lastcopy.simulate.rare.Tuning} finds the biases by cross entropy, {@link
 * lastcopy.simulate.rare.RareRun} counts under a {@link lastcopy.simulate.rare.Mixture} of them
 * into a {@link lastcopy.simulate.rare.RareTally}.
 */
package lastcopy.simulate.rare;
