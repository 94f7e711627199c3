/**
 * Which of the numbers that a studio takes for granted matters: each {@link
 * lastcopy.decide.assumed.Assumption} of a layout, found by {@link
 * lastcopy.decide.assumed.Assumptions}, times a factor; and the factor at which of two layouts the
 * other one is the safer ({@link lastcopy.decide.assumed.FlipSearch}).
 */
package lastcopy.decide.assumed;
