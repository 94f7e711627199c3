package lastcopy.fit;

/** A law whose parameters are the most likely ones for some records. */
public sealed interface FittedLaw permits ExponentialFit, WeibullFit, LognormalFit, PiecewiseFit {

  /** The log-likelihood of the records. */
  double logLikelihood();

  /** How many parameters were fitted. */
  int parameters();

  /** The chance to be running at an age, in [0, 1]. */
  double survival(double age);

  /**
   * Akaike's information criterion, 2 × parameters − 2 × log-likelihood (IEEE Trans. Automatic
   * Control 19, 1974): less is better, and a difference below about 2 says nothing.
   */
  default double aic() {
    return 2 * (parameters() - logLikelihood());
  }
}
