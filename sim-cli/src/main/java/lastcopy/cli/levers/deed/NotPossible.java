package lastcopy.cli.levers.deed;

/**
 * A kind of change that cannot be made to a layout.
 *
 * @param id stable
 * @param title what an owner would call it
 * @param why a clause, as after "because"
 */
public record NotPossible(String id, String title, String why) {}
