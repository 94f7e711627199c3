package lastcopy.history.report;

/**
 * One loss event: all that is lost at one instant.
 *
 * @param hours when, in hours from the start
 * @param bytes how many bytes
 * @param shoots how many shoots, parts as parts
 * @param shootsHit shoots of which any byte is lost
 * @param everything whether no drive or service then holds any footage that counts
 * @param cause what struck, with what was already down or behind
 * @param weight the likelihood ratio of the history up to this instant; 1 in a plain history
 */
public record Loss(
    double hours,
    double bytes,
    double shoots,
    long shootsHit,
    boolean everything,
    Cause cause,
    double weight) {}
