/**
 * What people do at the desk: deletions and malware strike, travel with the feeds, are kept by
 * copies for a while, and are noticed or not.
 */
package lastcopy.history.event.desk;
