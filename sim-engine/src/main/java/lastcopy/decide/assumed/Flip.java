package lastcopy.decide.assumed;

import java.util.Optional;
import lastcopy.interval.Estimate;

/**
 * Where the order of two layouts turns round as one number changes.
 *
 * @param assumption the number
 * @param factor at which it turns, with its interval; empty where none from a tenth to ten times
 *     the number does
 * @param isLooked whether it is known which is safer at both ends, and there was time to look
 */
public record Flip(Assumption assumption, Optional<Estimate> factor, boolean isLooked) {}
