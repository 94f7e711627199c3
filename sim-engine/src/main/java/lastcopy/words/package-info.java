/**
 * How amounts and chances are told to a reader, the same in tables, sentences and charts: the unit
 * of an amount of data ({@link lastcopy.words.ByteUnit}), and of how many studios a chance is told
 * ({@link lastcopy.words.OutOf}).
 */
package lastcopy.words;
