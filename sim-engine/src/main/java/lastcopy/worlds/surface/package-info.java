/**
 * A smooth surface over what is not known: how a chance depends on standard normal deviates, fitted
 * to counts of simulated histories, so that percentiles over worlds are freed of the noise of the
 * histories within each.
 *
 * <p>{@link lastcopy.worlds.surface.Basis} is the polynomial chaos of Hermite polynomials (Wiener,
 * American Journal of Mathematics 60 (1938) 897-936), {@link lastcopy.worlds.surface.SurfaceFit}
 * fits it by quasi-likelihood (Wedderburn, Biometrika 61 (1974) 439-447), {@link
 * lastcopy.worlds.surface.BasisChoice} takes as many of its terms as losses can tell, {@link
 * lastcopy.worlds.surface.Grid} holds the points at which percentiles and shares of variance are
 * taken, and {@link lastcopy.worlds.surface.Jackknife} says how far each is known.
 */
package lastcopy.worlds.surface;
