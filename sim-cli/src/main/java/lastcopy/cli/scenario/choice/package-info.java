/**
 * What a layout leaves open: {@link lastcopy.cli.scenario.choice.ChoiceFinder} finds it, {@link
 * lastcopy.cli.scenario.choice.Resolved} puts one of the alternatives in its place.
 */
package lastcopy.cli.scenario.choice;
