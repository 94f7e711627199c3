package lastcopy.cli.ask;

import java.util.Optional;

/**
 * What was typed, as it is kept; or why it is no answer.
 *
 * @param value as a file has it; empty if it is no answer
 * @param complaint a sentence; empty if it is an answer
 */
record Parsed(Optional<String> value, String complaint) {

  static Parsed as(String value) {
    return new Parsed(Optional.of(value), "");
  }

  static Parsed not(String complaint) {
    return new Parsed(Optional.empty(), complaint);
  }
}
