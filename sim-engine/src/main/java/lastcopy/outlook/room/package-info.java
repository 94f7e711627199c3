/**
 * Room and time, for {@code inspect}: which number of drives holds the footage under a fill limit
 * and when the next is due, what limits each way and what it would do without that limit, how long
 * an offload takes and how many people can edit at once. All of it without luck; {@link
 * lastcopy.outlook.room.RoomAndTime} is the door.
 */
package lastcopy.outlook.room;
