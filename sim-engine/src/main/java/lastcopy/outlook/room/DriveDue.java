package lastcopy.outlook.room;

import java.util.OptionalInt;

/**
 * When a copy outgrows its fill limit.
 *
 * @param years since the start
 * @param drives how many drives of its smallest model (on a shelf of its next) it takes from then
 *     on; empty if no number in its arrangement does, so that it takes larger ones
 * @param roomBytes the usable room that it takes from then on
 */
public record DriveDue(double years, OptionalInt drives, double roomBytes) {}
