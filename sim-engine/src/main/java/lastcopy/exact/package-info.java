/**
 * Closed forms and Markov chains that prove the engine where they apply, and that share no code
 * with it: {@link lastcopy.exact.MarkovChain} solves any chain of a few states, and each other
 * class is one model with its source.
 */
package lastcopy.exact;
