/** The command {@code rates}: typical values with their sources. */
package lastcopy.cli.rates;
