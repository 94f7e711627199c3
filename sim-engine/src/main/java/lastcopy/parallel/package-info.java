/**
 * Work on threads whose results come in the order of the work, however fast each thread is: {@link
 * lastcopy.parallel.OrderedChunks}.
 */
package lastcopy.parallel;
