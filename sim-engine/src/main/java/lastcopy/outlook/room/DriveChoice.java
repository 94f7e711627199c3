package lastcopy.outlook.room;

import java.util.OptionalInt;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;

/**
 * The least number of drives that holds the footage of some years under the fill limit.
 *
 * @param model which drives
 * @param arrangement how they hold it
 * @param years for how long
 * @param drives how many; empty if no number does
 */
public record DriveChoice(
    DriveModel model, Arrangement arrangement, double years, OptionalInt drives) {}
