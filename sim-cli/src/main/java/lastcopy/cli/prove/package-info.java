/**
 * The command {{@link lastcopy.cli.prove.code} prove}: shows the engine against published and exact
 * values as a table with sources ({@link lastcopy.cli.prove.ProveText}) or JSON ({@link
 * lastcopy.cli.prove.ProveJson}).
 */
package lastcopy.cli.prove;
