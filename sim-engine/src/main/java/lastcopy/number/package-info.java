/** Elementary functions that give the same last digit on every machine. */
package lastcopy.number;
