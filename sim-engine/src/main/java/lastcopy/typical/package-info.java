/** Typical values of the trade for those who know nothing better, each with its source and mark. */
package lastcopy.typical;
