/**
 * The command {{@link lastcopy.cli.story.code} story}: chooses a history ({@link
 * lastcopy.cli.story.StoryChoice}) and puts what happened in it into words ({@link
 * lastcopy.cli.story.StorySentences}, {@link lastcopy.cli.story.StoryEnding}), as a timeline
 * ({@link lastcopy.cli.story.StoryTimeline}) or JSON ({@link lastcopy.cli.story.StoryJson}).
 */
package lastcopy.cli.story;
