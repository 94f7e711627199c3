/**
 * Edits of a scenario: a tree of a file's values ({@link lastcopy.cli.edit.ScenarioTree}) that
 * gives new trees, is read by the ordinary reader, and is written as a file of its own. What is
 * changed is told as {@link lastcopy.cli.edit.Change}s, in texts as an owner would write them; a
 * layout of its own with such changes is a {@link lastcopy.cli.edit.LayoutEdit}.
 */
package lastcopy.cli.edit;
