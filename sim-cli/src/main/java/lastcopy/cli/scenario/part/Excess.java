package lastcopy.cli.scenario.part;

import java.util.List;

/**
 * Something in a scenario that would take absurdly much to compute.
 *
 * @param path the keys from the top of the file to where it stands
 * @param found what it says, and what that makes
 * @param accepted what would do
 */
public record Excess(List<String> path, String found, String accepted) {}
