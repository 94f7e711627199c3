/**
 * What is on its way between copies: runs of feeds ({@link lastcopy.history.event.feed.Feeds}), how
 * fast they get on ({@link lastcopy.history.event.feed.Links}), drives that take turns, feeds that
 * stop unseen.
 */
package lastcopy.history.event.feed;
