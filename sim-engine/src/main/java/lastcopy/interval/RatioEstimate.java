package lastcopy.interval;

import java.util.OptionalDouble;

/**
 * How two layouts compare: the ratio and the difference of their chances.
 *
 * @param ratio the quotient a/b of the two chances; empty if either was never seen
 * @param low the lower end of its interval; alone if b was never seen ("at least")
 * @param high the upper end; alone if a was never seen ("at most")
 * @param difference a − b with its interval; not seen if neither was
 */
public record RatioEstimate(
    OptionalDouble ratio, OptionalDouble low, OptionalDouble high, Estimate difference) {}
