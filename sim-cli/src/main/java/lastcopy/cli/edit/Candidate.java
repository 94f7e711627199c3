package lastcopy.cli.edit;

import java.util.List;
import lastcopy.scenario.Layout;

/**
 * A layout of a file with each of its choices made.
 *
 * @param from id of the layout in the file
 * @param choices what is chosen, in the order of the file; of a copy that is not there only that
 * @param layout with an id and a title of its own; those of the file where all is as it is today
 */
public record Candidate(String from, List<Chosen> choices, Layout layout) {

  /** Copies the list. */
  public Candidate {
    choices = List.copyOf(choices);
  }

  /**
   * One choice as it is made.
   *
   * @param key below the layout, such as {@code copies.main.noticed}
   * @param value as in the file, in one line; {@code with} or {@code without} of a copy
   * @param words the same as an owner would say it, such as {@code main noticed 1 day}
   * @param isToday whether it is so today
   */
  public record Chosen(String key, String value, String words, boolean isToday) {}

  /** The id. */
  public String id() {
    return layout.id();
  }

  /** What is otherwise than in another one; what only the other has is not told. */
  public List<Chosen> changesFrom(Candidate other) {
    return choices.stream()
        .filter(
            chosen ->
                other.choices.stream()
                    .noneMatch(
                        own ->
                            own.key().equals(chosen.key()) && own.value().equals(chosen.value())))
        .toList();
  }

  /** What is otherwise than today. */
  public List<Chosen> changes() {
    return changes(choices);
  }

  static List<Chosen> changes(List<Chosen> of) {
    return of.stream().filter(chosen -> !chosen.isToday()).toList();
  }
}
