/**
 * Copies that go and come back: drives fail, places and boxes have mishaps, copies turn out
 * unusable ({@link lastcopy.history.event.copy.Outages} ends one), hardware returns and is filled
 * again; what is shot meanwhile, what ages out, and how bare the footage stands while time passes.
 */
package lastcopy.history.event.copy;
