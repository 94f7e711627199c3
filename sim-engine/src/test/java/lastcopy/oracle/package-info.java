/**
 * A second simulator of the model, slow and plain, to hold the engine against.
 *
 * <p>It shares with the engine the scenario, the inverse hazards of the laws and the rates of the
 * ways, and nothing else. Where the model's page leaves room, it takes these readings:
 *
 * <ul>
 *   <li>A mishap of a place or a box takes the drives of a copy with it: all are new at the return.
 *   <li>A deletion takes of its block what the working copy holds as its present state; while the
 *       working copy is gone there is nothing to delete. A second mishap of the desk does not
 *       delete again what is deleted already.
 *   <li>Versions are put back where they are held, and on the working copy if it has hardware; what
 *       other copies dropped comes with their next runs. A refill reads present states only.
 *   <li>What the source of a run loses before it has crossed takes no time on the link. The engine
 *       reads "copies what a holds at s" to the letter where a deletion reaches the source during a
 *       run: what was on its way still arrives, unless it is lost. No studio here rests on it. A
 *       failed drive of a shelf cuts nothing: the rest of the run goes on.
 *   <li>A failed drive of a shelf that is the working copy is refilled in turn with others: one
 *       refill at a time. Cards are offloaded again onto it, too.
 *   <li>A continuous feed whose source is itself being filled looks every 0.2 h for more. It has
 *       its share of an uplink in between, unless its copy has what comes next already.
 *   <li>A fed copy is being brought back, and pays for what its source cannot read, until it holds
 *       what the first run after its return was to bring, as far as that is still to be had; what
 *       else such a run carries is not paid for. Defects of the source count at each such start.
 *   <li>The j-th of k rotated drives has runs at {@code at} + j·P, j from 0. It visits also while
 *       its feed has stopped, since nobody knows, but not while it or its source is gone.
 *   <li>A feed stops by a Poisson process that also runs while a copy is gone; a return does not
 *       start it again, a look does. A copy spoils only while it has hardware.
 *   <li>A spoilt copy is needed for a refill if it is the fastest that was thought to hold
 *       something that the working copy lacks; if it spoils while it is read it is found at once.
 *   <li>The first drive of a shelf is in service from the start, also where nothing is on hand.
 *   <li>All cards at a place go by one draw of {@code takes}.
 *   <li>A clip lies whole within what is held, counted through gaps; it goes from a copy only where
 *       no other copy, version or card holds it. Errors of a refill lie in what was read.
 * </ul>
 */
package lastcopy.oracle;
