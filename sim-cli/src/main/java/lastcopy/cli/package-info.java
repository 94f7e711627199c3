/**
 * The command line: {@link lastcopy.cli.Main} is the only class that exits, {@link
 * lastcopy.cli.Program} turns arguments into a command and its outcome into a status. Each command
 * is a package of its own; they share options ({{@link lastcopy.cli.code} option}), what they need
 * of the world ({{@link lastcopy.cli.code} host}) and the wording of figures ({{@link
 * lastcopy.cli.code} output}).
 */
package lastcopy.cli;
