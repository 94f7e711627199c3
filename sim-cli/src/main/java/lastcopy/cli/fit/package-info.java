/** The command {@code fit}: lifetimes from records of drives. */
package lastcopy.cli.fit;
