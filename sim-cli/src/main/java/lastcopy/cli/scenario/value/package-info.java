/**
 * Single values: {@link lastcopy.cli.scenario.value.Kind} is the table of keys, {@link
 * lastcopy.cli.scenario.value.Section} a block with its keys, {@link
 * lastcopy.cli.scenario.value.Values} and {@link lastcopy.cli.scenario.value.UnitTable} read
 * numbers with their units within a {@link lastcopy.cli.scenario.value.Bound}.
 */
package lastcopy.cli.scenario.value;
