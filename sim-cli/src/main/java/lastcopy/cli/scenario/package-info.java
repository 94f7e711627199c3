/**
 * Reads a scenario file ({@link lastcopy.cli.scenario.ScenarioReader}), with the position of every
 * mistake. {@link lastcopy.cli.scenario.Kind} is the table of keys, a class {{@link
 * lastcopy.cli.scenario.code} ...Reader} reads each part, {@link lastcopy.cli.scenario.Values} and
 * {@link lastcopy.cli.scenario.UnitTable} read single values, {@link lastcopy.cli.scenario.Limits}
 * refuses what is absurdly much, and {@link lastcopy.cli.scenario.Printable} makes text of
 * strangers safe to show.
 */
package lastcopy.cli.scenario;
