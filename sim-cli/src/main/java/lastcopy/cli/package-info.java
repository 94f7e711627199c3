/** The command line: one class a command, writers for its results, and the only exit in Main. */
package lastcopy.cli;
