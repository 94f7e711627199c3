/** Reads a scenario file, with the position of every mistake. */
package lastcopy.cli.scenario;
