/**
 * Work on threads whose results come in the order of the work, however fast each thread is: {@link
 * lastcopy.parallel.Workers} each have something of their own to simulate with, and {@link
 * lastcopy.parallel.OrderedChunks} hands out what they found. It is the only place with threads:
 * plain histories, biased ones and searches for a story all work through it.
 */
package lastcopy.parallel;
