/**
 * {@code advise}: what a file leaves open spans candidates; which is the cheapest under a target,
 * the safest within a budget, and what each step along the front of cost against risk buys. Chosen
 * by {@code lastcopy.decide}.
 */
package lastcopy.cli.advise;
