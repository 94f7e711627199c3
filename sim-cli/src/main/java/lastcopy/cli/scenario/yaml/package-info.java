/**
 * The text of a scenario file and where everything stands in it: {@link
 * lastcopy.cli.scenario.yaml.Loader} makes a tree of nodes of it, {@link
 * lastcopy.cli.scenario.yaml.Notes} gathers mistakes with their line and column, defaults that were
 * taken and ranges; {@link lastcopy.cli.scenario.yaml.Spelling} guesses what was meant, and {@link
 * lastcopy.cli.scenario.yaml.Printable} makes text of strangers safe to show.
 */
package lastcopy.cli.scenario.yaml;
