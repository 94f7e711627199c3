/**
 * A class {@code ...Reader} for each part of a scenario, from {@link
 * lastcopy.cli.scenario.part.StudioReader} down; {@link lastcopy.cli.scenario.part.Limits} refuses
 * what is absurdly much.
 */
package lastcopy.cli.scenario.part;
