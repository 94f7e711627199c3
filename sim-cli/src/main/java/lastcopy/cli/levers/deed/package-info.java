/**
 * The single changes that an owner could make to a layout, a class each ({@link
 * lastcopy.cli.levers.deed.Lever}), all in {@link lastcopy.cli.levers.deed.Catalogue}. Each is
 * found from the scenario alone and is an edit of its file, so that it can be read, simulated and
 * written as any layout; what it takes for granted, such as a price, it says.
 */
package lastcopy.cli.levers.deed;
