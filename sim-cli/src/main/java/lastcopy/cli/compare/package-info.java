/**
 * The command {{@link lastcopy.cli.compare.code} compare}, the main job: {@link
 * lastcopy.cli.compare.CompareCommand} simulates each layout, and {@link
 * lastcopy.cli.compare.TextReport}, {@link lastcopy.cli.compare.JsonResult} and {@link
 * lastcopy.cli.compare.CsvResult} write the one result, with what must be said beside it ({@link
 * lastcopy.cli.compare.Remarks}).
 */
package lastcopy.cli.compare;
