package lastcopy.typical;

/**
 * One typical value.
 *
 * @param id its name for other programs
 * @param what what it is of, in words
 * @param value as a scenario says it
 * @param mark how well founded it is
 * @param source what suggests it, or an empty text
 */
public record TypicalValue(String id, String what, String value, Mark mark, String source) {}
