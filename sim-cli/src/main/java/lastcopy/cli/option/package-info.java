/**
 * Options that several commands have, and how their values are read ({@link
 * lastcopy.cli.option.Converters}). Each is a class that picocli mixes into a command.
 */
package lastcopy.cli.option;
