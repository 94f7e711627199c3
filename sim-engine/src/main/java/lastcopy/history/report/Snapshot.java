package lastcopy.history.report;

/**
 * How things stand just after a happening, by copy in the order of {@code History.copyNames}.
 *
 * @param shotBytes all that has been offloaded so far, F(t)
 * @param lostBytes all that has been lost for good so far
 * @param heldBytes what each copy holds
 * @param gone which copies have no hardware
 * @param drivesDown how many drives of each copy are down
 * @param bareBytes what stands in one copy only
 * @param weight the likelihood ratio so far; 1 in a plain history
 */
public record Snapshot(
    double shotBytes,
    double lostBytes,
    double[] heldBytes,
    boolean[] gone,
    int[] drivesDown,
    double bareBytes,
    double weight) {}
