/**
 * How figures are written, whatever the command: numbers with their intervals ({@link
 * lastcopy.cli.output.Numbers}), lengths of time ({@link lastcopy.cli.output.Spans}), pages of JSON
 * ({@link lastcopy.cli.output.JsonPage}), text in lines ({@link lastcopy.cli.output.Wrap}), and the
 * words for what a scenario leaves out ({@link lastcopy.cli.output.OmissionWords}).
 */
package lastcopy.cli.output;
