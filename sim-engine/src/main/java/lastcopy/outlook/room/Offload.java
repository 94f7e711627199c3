package lastcopy.outlook.room;

import lastcopy.outlook.Route;

/**
 * How long a shoot takes onto the working copy, if cards and their reader are as fast as its
 * hardware; reading it back to check takes as long again.
 *
 * @param slowest what decides
 * @param shootNow size of a shoot in bytes at the start
 * @param hoursNow hours that it takes
 * @param shootInLastYear size in bytes of the largest in the last year
 * @param hoursInLastYear hours that it takes
 */
public record Offload(
    Route.Part slowest,
    double shootNow,
    double hoursNow,
    double shootInLastYear,
    double hoursInLastYear) {}
