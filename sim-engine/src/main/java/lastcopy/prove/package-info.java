/** The engine held against published and exact values, on the machine of whoever asks. */
package lastcopy.prove;
