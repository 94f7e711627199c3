/**
 * The command {@code ask}: questions that an owner can answer ({@link
 * lastcopy.cli.ask.QuestionTable}), one after the other ({@link lastcopy.cli.ask.Conversation}),
 * whose answers become layouts ({@link lastcopy.cli.ask.Steps}), pictures of them and a scenario
 * with comments ({@link lastcopy.cli.ask.ScenarioPage}). Lines are typed with JLine on a terminal,
 * and read as they come from a pipe.
 */
package lastcopy.cli.ask;
