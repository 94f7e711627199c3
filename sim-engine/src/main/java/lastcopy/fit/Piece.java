package lastcopy.fit;

import lastcopy.interval.Estimate;

/**
 * A stretch of ages with a hazard of its own.
 *
 * @param from its first age
 * @param to its last age
 * @param timeAtRisk of all records within it
 * @param failures within it; where ages at failure are not known, as many as are to be expected
 * @param hazard failures per unit of time, with its interval by Poisson's law
 */
public record Piece(double from, double to, double timeAtRisk, double failures, Estimate hazard) {}
