package lastcopy.cli.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.scenario.CandidateReader;
import lastcopy.cli.scenario.choice.OpenChoice;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * All layouts that a file stands for: each layout with each choice made. Those that are today's
 * have the ids and titles of the file; others a number, and in their titles what is otherwise.
 */
public final class Candidates {

  private static final int LONGEST_TITLE = 200;

  private final ScenarioTree tree;
  private final CandidateReader open;
  private final Map<String, Candidate> all = new LinkedHashMap<>();
  private final List<Impossible> impossible = new ArrayList<>();
  private final Map<String, int[]> picks = new HashMap<>();

  private Candidates(ScenarioTree tree) {
    this.tree = tree;
    open = tree.choices();
    open.layouts().forEach(this::read);
  }

  /** Those of a file that is a valid scenario; the first is today's of its first layout. */
  public static Candidates of(ScenarioTree tree) {
    return new Candidates(tree);
  }

  private void read(String layout) {
    String prefix = prefix(layout);
    int number = 0;
    for (int[] pick : open.picks(layout)) {
      number++;
      List<Candidate.Chosen> chosen = chosen(open.choices(layout), pick);
      boolean today = number == 1;
      String id = today ? layout : prefix + number;
      Optional<String> title = today ? Optional.empty() : Optional.of(title(layout, chosen));
      CandidateReader.Reading reading = open.read(layout, id, title, pick);
      if (reading.layout().isPresent()) {
        all.put(id, new Candidate(layout, chosen, reading.layout().get()));
        picks.put(id, pick);
      } else {
        impossible.add(new Impossible(layout, chosen, why(reading.problems())));
      }
    }
  }

  /** What begins no other layout's id. */
  private String prefix(String layout) {
    StringBuilder prefix = new StringBuilder(layout).append('-');
    while (open.layouts().stream().anyMatch(other -> other.startsWith(prefix.toString()))) {
      prefix.append("c-");
    }
    return prefix.toString();
  }

  /** Today's is read first, and of a valid file it is a layout. */
  private String title(String layout, List<Candidate.Chosen> chosen) {
    String changes =
        Candidate.changes(chosen).stream()
            .map(Candidate.Chosen::words)
            .collect(Collectors.joining(", "));
    String whole = of(layout).layout().title() + ": " + changes;
    return whole.length() <= LONGEST_TITLE ? whole : whole.substring(0, LONGEST_TITLE - 3) + "...";
  }

  private static String why(List<Problem> problems) {
    return problems.stream()
        .findFirst()
        .map(first -> first.found() + "; accepted: " + first.accepted())
        .orElse("the copies do not fit together");
  }

  private static List<Candidate.Chosen> chosen(List<OpenChoice> choices, int... pick) {
    List<Candidate.Chosen> made = new ArrayList<>();
    for (int i = 0; i < pick.length; i++) {
      OpenChoice choice = choices.get(i);
      boolean absent = choice.within().filter(copy -> pick[copy] == 0).isPresent();
      if (!absent) {
        made.add(chosen(choice, pick[i]));
      }
    }
    return made;
  }

  private static Candidate.Chosen chosen(OpenChoice choice, int number) {
    OpenChoice.Alternative one = choice.alternatives().get(number);
    String value =
        choice.isOfCopy()
            ? (number == 0 ? "without" : "with")
            : one.value().map(TreeTexts::line).orElse("");
    String key = String.join(".", choice.path());
    return new Candidate.Chosen(key, value, ChoiceWords.of(choice, value), number == 0);
  }

  /** The candidates, layout by layout, what is today's first. */
  public List<Candidate> all() {
    return List.copyOf(all.values());
  }

  /** The combinations that are no valid layouts. */
  public List<Impossible> impossible() {
    return List.copyOf(impossible);
  }

  /** The file's studio with all candidates as its layouts. */
  public Studio studio() {
    return open.studio(layouts());
  }

  /** The layouts of the candidates. */
  public List<Layout> layouts() {
    return all.values().stream().map(Candidate::layout).toList();
  }

  /** Whether the file leaves nothing open. */
  public boolean areOnlyLayouts() {
    return open.layouts().stream().allMatch(layout -> open.choices(layout).isEmpty());
  }

  /** The candidate of an id. */
  public Candidate of(String id) {
    return Optional.ofNullable(all.get(id)).orElseThrow();
  }

  /** A file with some candidates as plain layouts, with the same ids, in that order. */
  public ScenarioTree withPlain(List<String> ids) {
    Map<String, Node> plain = new LinkedHashMap<>();
    for (String id : ids) {
      plain.put(id, open.node(of(id).from(), picks.get(id)));
    }
    ScenarioTree written = tree.withLayouts(plain);
    for (String id : ids) {
      Candidate each = of(id);
      if (!id.equals(each.from())) {
        written =
            written.with(List.of("layouts", id, "title"), TreeTexts.quoted(each.layout().title()));
      }
    }
    return written;
  }
}
