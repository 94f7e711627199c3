package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.output.PriceWords;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Unpriced;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * What a result says beside its figures, of the scenario and not of luck.
 *
 * @param omissions what is not counted because the file says nothing about it
 * @param assumptions by the id of each layout, what its figures take for granted, if anything
 * @param unpriced what costs nothing because the file does not price it
 * @param warnings sentences for the end of the report
 * @param cautions what to bear in mind whatever the figures are, after the warnings
 */
public record Remarks(
    List<Omission> omissions,
    Map<String, List<String>> assumptions,
    List<Unpriced> unpriced,
    List<String> warnings,
    List<String> cautions) {

  /** Nothing to bear in mind. */
  public Remarks(
      List<Omission> omissions,
      Map<String, List<String>> assumptions,
      List<Unpriced> unpriced,
      List<String> warnings) {
    this(omissions, assumptions, unpriced, warnings, List.of());
  }

  /** Copies the lists. */
  public Remarks {
    omissions = List.copyOf(omissions);
    assumptions = Map.copyOf(assumptions);
    unpriced = List.copyOf(unpriced);
    warnings = List.copyOf(warnings);
    cautions = List.copyOf(cautions);
  }

  /** Those of a studio, after the warnings that its reader has. */
  public static Remarks of(Studio studio, List<String> fromReader) {
    List<Unpriced> unpriced = Unpriced.of(studio);
    List<String> warnings = new ArrayList<>(fromReader);
    warnings.addAll(TopWarnings.of(Outlook.of(studio)));
    PriceWords.sentence(unpriced).ifPresent(warnings::add);
    return new Remarks(Omissions.of(studio), assumptions(studio), unpriced, warnings);
  }

  private static Map<String, List<String>> assumptions(Studio studio) {
    return studio.layouts().stream()
        .collect(
            Collectors.toMap(
                Layout::id,
                layout -> OmissionWords.assumptions(Omissions.of(studio.withLayout(layout)))));
  }

  /** The same with one more warning. */
  public Remarks andWarning(String sentence) {
    List<String> more = new ArrayList<>(warnings);
    more.add(sentence);
    return new Remarks(omissions, assumptions, unpriced, more, cautions);
  }

  /** The same with one more thing to bear in mind. */
  public Remarks andCaution(String sentence) {
    List<String> more = new ArrayList<>(cautions);
    more.add(sentence);
    return new Remarks(omissions, assumptions, unpriced, warnings, more);
  }

  /** What the figures of a layout take for granted, if anything. */
  public Optional<String> assumption(String layout) {
    return sentence(assumed(layout));
  }

  /** The same in parts, such as {@code a deletion is seen at once}. */
  public List<String> assumed(String layout) {
    return assumptions.getOrDefault(layout, List.of());
  }

  private static Optional<String> sentence(List<String> assumed) {
    return assumed.isEmpty()
        ? Optional.empty()
        : Optional.of("assumes that " + String.join(", and that ", assumed));
  }

  /** The same of each of several layouts, if they are alike in it. */
  public Optional<String> assumptionOfAll() {
    boolean alike = assumptions.size() > 1 && Set.copyOf(assumptions.values()).size() == 1;
    return alike ? sentence(assumptions.values().iterator().next()) : Optional.empty();
  }
}
