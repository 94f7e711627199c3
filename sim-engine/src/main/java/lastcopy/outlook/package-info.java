/**
 * What can be said of a scenario without luck, for {{@link lastcopy.outlook.code} inspect} and
 * beside every result: room by year, the slowest part of each way, lags and refill times ({@link
 * lastcopy.outlook.Outlook}), warnings ({@link lastcopy.outlook.Warnings}, one method each in a
 * class of rules) and what a file leaves out ({@link lastcopy.outlook.Omissions}).
 */
package lastcopy.outlook;
