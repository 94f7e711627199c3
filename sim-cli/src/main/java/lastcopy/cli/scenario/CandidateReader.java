package lastcopy.cli.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.choice.ChoiceFinder;
import lastcopy.cli.scenario.choice.OpenChoice;
import lastcopy.cli.scenario.choice.Resolved;
import lastcopy.cli.scenario.part.LayoutReader;
import lastcopy.cli.scenario.part.Limits;
import lastcopy.cli.scenario.part.MoneyReader;
import lastcopy.cli.scenario.part.StudioReader;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/**
 * Reads the layouts of a file with each of their choices made, one at a time, against what the rest
 * of the file says. A pick is a number for each choice of a layout, 0 for what is there today.
 */
public final class CandidateReader {

  /** A layout that was read, or why it is none. */
  public record Reading(Optional<Layout> layout, List<Problem> problems) {
    /** Copies the list. */
    public Reading {
      problems = List.copyOf(problems);
    }
  }

  private static final String LAYOUTS = "layouts";

  private final String name;
  private final Node root;
  private final Map<String, Nodes.Named> layouts = new LinkedHashMap<>();
  private final Map<String, List<OpenChoice>> choices;

  /** What layouts stand on; read once, and only where there is something to choose. */
  private Optional<StudioReader.Ground> ground = Optional.empty();

  private CandidateReader(String name, Node root, Map<String, List<OpenChoice>> choices) {
    this.name = name;
    this.root = root;
    this.choices = choices;
    layouts(root).forEach(each -> layouts.put(each.name(), each));
  }

  private static List<Nodes.Named> layouts(Node root) {
    Optional<Node> all = Nodes.find(root, LAYOUTS);
    return all.isPresent() ? Nodes.named(new Notes(""), all.get(), LAYOUTS) : List.of();
  }

  /** Finds the choices of a file; their own mistakes are noted. */
  static CandidateReader of(Notes notes, Node root) {
    Map<String, List<OpenChoice>> choices = new LinkedHashMap<>();
    if (root instanceof MappingNode mapping) {
      for (NodeTuple entry : mapping.getValue()) {
        if (!Nodes.text(entry.getKeyNode()).equals(LAYOUTS)) {
          ChoiceFinder.refuse(notes, entry.getValueNode());
        }
      }
    }
    for (Nodes.Named layout : layouts(root)) {
      choices.put(layout.name(), ChoiceFinder.of(notes, layout));
    }
    return new CandidateReader(notes.file(), root, choices);
  }

  /** The ids of the layouts, in the order of the file. */
  public List<String> layouts() {
    return List.copyOf(choices.keySet());
  }

  /** What a layout leaves open. */
  public List<OpenChoice> choices(String layout) {
    return choices.get(layout);
  }

  /** How many layouts a layout stands for. */
  public double count(String layout) {
    List<OpenChoice> open = choices.get(layout);
    double all = 1;
    for (int i = 0; i < open.size(); i++) {
      if (open.get(i).within().isEmpty()) {
        all *= open.get(i).isOfCopy() ? 1 + inside(open, i) : open.get(i).alternatives().size();
      }
    }
    return all;
  }

  /** In how many ways a copy can be there. */
  private static double inside(List<OpenChoice> open, int copy) {
    return open.stream()
        .filter(each -> each.within().filter(own -> own == copy).isPresent())
        .mapToDouble(each -> each.alternatives().size())
        .reduce(1, (a, b) -> a * b);
  }

  /** Every pick of a layout once; of a copy that is not there nothing else is picked. */
  public List<int[]> picks(String layout) {
    List<int[]> all = new ArrayList<>();
    add(all, choices.get(layout), new int[choices.get(layout).size()], 0);
    return all;
  }

  private static void add(List<int[]> to, List<OpenChoice> open, int[] pick, int from) {
    if (from == pick.length) {
      to.add(pick.clone());
      return;
    }
    boolean absent = open.get(from).within().filter(copy -> pick[copy] == 0).isPresent();
    int ways = absent ? 1 : open.get(from).alternatives().size();
    for (int k = 0; k < ways; k++) {
      pick[from] = k;
      add(to, open, pick, from + 1);
    }
    pick[from] = 0;
  }

  /** What all layouts leave open. */
  Scenario.Open open() {
    int open = choices.values().stream().mapToInt(List::size).sum();
    return new Scenario.Open(open, (long) layouts().stream().mapToDouble(this::count).sum());
  }

  /** The studio with the layouts of candidates. */
  public Studio studio(List<Layout> of) {
    return ground().studio(of);
  }

  private StudioReader.Ground ground() {
    if (ground.isEmpty()) {
      ground = new StudioReader(new Notes(name)).ground(root);
    }
    return ground.orElseThrow(() -> new IllegalStateException("a file with mistakes"));
  }

  boolean isPlain() {
    return choices.values().stream().allMatch(List::isEmpty);
  }

  /** The file as it is today. */
  public Node today() {
    if (isPlain()) {
      return root;
    }
    Map<Node, Optional<Node>> today = new HashMap<>();
    choices.forEach(
        (layout, open) -> {
          Node changed = node(layout, new int[open.size()]);
          today.put(layouts.get(layout).value(), Optional.of(changed));
        });
    return Resolved.of(root, today);
  }

  /** A layout with its choices made. */
  public Node node(String layout, int... pick) {
    List<OpenChoice> open = choices.get(layout);
    Map<Node, Optional<Node>> others = new HashMap<>();
    Costs more = Costs.NONE;
    for (int i = 0; i < pick.length; i++) {
      OpenChoice.Alternative one = open.get(i).alternatives().get(pick[i]);
      others.put(open.get(i).at(), one.value());
      more = more.plus(one.costs());
    }
    Node changed = Resolved.of(layouts.get(layout).value(), others);
    Notes notes = new Notes(name);
    Costs stated =
        Nodes.find(changed, "costs")
            .map(node -> new MoneyReader(notes).costs(node, layout))
            .orElse(Costs.NONE);
    return Resolved.withCosts(changed, stated, more);
  }

  /**
   * Reads a layout with its choices made.
   *
   * @param id of the candidate
   * @param title of the candidate; the layout's own if empty
   * @throws IllegalStateException if the rest of the file has mistakes
   */
  public Reading read(String layout, String id, Optional<String> title, int... pick) {
    StudioReader.Ground all = ground();
    Notes notes = new Notes(name);
    Nodes.Named named = layouts.get(layout);
    Optional<Layout> read =
        new LayoutReader(notes, all.known(), all.onHand())
            .layout(new Nodes.Named(layout, named.key(), node(layout, pick)))
            .map(each -> named(each, id, title));
    List<Problem> problems = new ArrayList<>(notes.problems());
    if (problems.isEmpty() && read.isPresent()) {
      Limits.of(all.studio(List.of(read.get())))
          .forEach(
              excess ->
                  problems.add(new Problem(name, 1, 1, excess.found(), excess.accepted(), "")));
    }
    return new Reading(problems.isEmpty() ? read : Optional.empty(), problems);
  }

  private static Layout named(Layout of, String id, Optional<String> title) {
    return new Layout(id, title.orElse(of.title()), of.copies(), of.cardsKeepHours(), of.costs());
  }
}
