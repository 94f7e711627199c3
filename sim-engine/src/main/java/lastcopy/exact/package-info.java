/** Closed forms and Markov chains that prove the engine where they apply. */
package lastcopy.exact;
