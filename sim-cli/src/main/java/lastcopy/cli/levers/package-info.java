/**
 * The command {@code levers}: which single change of a layout takes most off the risk, and what it
 * costs. {@link lastcopy.cli.levers.LeverStudy} makes a layout of each change that {@link
 * lastcopy.cli.levers.deed} finds; the engine measures them.
 */
package lastcopy.cli.levers;
