/**
 * The command {{@link lastcopy.cli.inspect.code} inspect}: explains a scenario without simulating
 * it, as a page ({@link lastcopy.cli.inspect.InspectText}) or JSON ({@link
 * lastcopy.cli.inspect.InspectJson}), and prints the schema, the keys and a template.
 */
package lastcopy.cli.inspect;
