/**
 * Single histories of a layout, told, and found among many: {@link lastcopy.story.Stories} tells
 * one by its number and looks for the first that loses, a typical one or a near miss; {@link
 * lastcopy.story.UnlikelyLosses} tells biased ones where a loss is too rare to find. A {@link
 * lastcopy.story.Story} is what happened, and {@link lastcopy.story.MissingSafeguard} what was
 * missing at a loss.
 */
package lastcopy.story;
