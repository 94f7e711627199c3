package lastcopy.outlook;

/**
 * Something that the owner of a scenario should know before believing its numbers.
 *
 * @param id stable, for other programs
 * @param copy the copy that it is about, or empty for the layout
 * @param text one sentence for a layman
 */
public record Warning(String id, String copy, String text) {}
