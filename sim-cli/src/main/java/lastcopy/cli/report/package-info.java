/**
 * The page for a partner: what is decided, what is at stake, and why, as one file of HTML. {@link
 * lastcopy.cli.report.ReportPage} puts it together from parts, each a record that a template shows;
 * the template escapes whatever it is given.
 */
package lastcopy.cli.report;
