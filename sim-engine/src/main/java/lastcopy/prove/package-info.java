/**
 * The engine held against published and exact values, on the machine of whoever asks: {@link
 * lastcopy.prove.Checks} lists one line a value, each with its source, {@link lastcopy.prove.Proof}
 * works through them, and a {@link lastcopy.prove.Finding} says whether a line holds.
 */
package lastcopy.prove;
