/**
 * Elementary functions that give the same last digit on every machine and faster than StrictMath,
 * with the error of each stated and tested ({@link lastcopy.number.Elementary}).
 */
package lastcopy.number;
