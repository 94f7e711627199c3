/**
 * Reads a scenario file, with the position of every mistake: {@link
 * lastcopy.cli.scenario.ScenarioReader} is the door. Below it {@code choice} finds what a layout
 * leaves open, {@code part} has a reader for each part, {@code value} reads single values by the
 * table of keys, and {@code yaml} knows the text.
 */
package lastcopy.cli.scenario;
