package lastcopy.outlook.room;

/**
 * How much room footage needs up to a time.
 *
 * @param years since the start
 * @param mostBytes the most footage that there is to keep at any time until then
 * @param roomBytes usable room that is filled by that no further than its limit
 */
public record RoomNeed(double years, double mostBytes, double roomBytes) {}
