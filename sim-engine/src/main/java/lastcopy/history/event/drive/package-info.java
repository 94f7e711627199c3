/**
 * Drives of a set: in service, failed, rebuilt, swapped; spots of theirs that cannot be read, each
 * of which costs a clip unless another copy holds it ({@link lastcopy.history.event.drive.Clips}).
 */
package lastcopy.history.event.drive;
