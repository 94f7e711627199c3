package lastcopy.cli.edit;

import java.util.List;

/**
 * A combination of choices that is no valid layout.
 *
 * @param from id of the layout in the file
 * @param choices what is chosen
 * @param why what was found, and what would be accepted
 */
public record Impossible(String from, List<Candidate.Chosen> choices, String why) {

  /** Copies the list. */
  public Impossible {
    choices = List.copyOf(choices);
  }
}
