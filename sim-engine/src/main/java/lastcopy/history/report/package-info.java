/**
 * What is told of a history while it goes on: losses, their causes and the time in between to a
 * {@link lastcopy.history.report.Ledger}, which counts; every happening, with a {@link
 * lastcopy.history.report.Snapshot} of how things stand just after it, to a {@link
 * lastcopy.history.report.HistoryListener}, which tells stories. Values and interfaces only:
 * nothing here knows how a history is simulated, and whoever uses the engine sees only these and
 * {@code History}.
 */
package lastcopy.history.report;
