package lastcopy.cli.scenario.yaml;

/**
 * One mistake in a scenario file.
 *
 * @param file the name of the file
 * @param line from 1
 * @param column from 1
 * @param found what stands there
 * @param accepted what would be accepted instead
 * @param suggestion the word that was probably meant; empty if there is none
 */
public record Problem(
    String file, int line, int column, String found, String accepted, String suggestion) {

  /** One line for a person: position, what was found, what is accepted, what was meant. */
  @Override
  public String toString() {
    String text =
        file + ":" + line + ":" + column + ": found " + found + "; accepted: " + accepted + ".";
    return Printable.of(suggestion.isEmpty() ? text : text + " Did you mean '" + suggestion + "'?");
  }
}
