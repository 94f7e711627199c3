package lastcopy.cli.scenario;

import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** Turns text into YAML nodes with positions, within limits that a scenario never needs. */
final class Loader {
  /** The longest file in characters. */
  static final int MOST_CHARACTERS = 1_000_000;

  private static final int DEEPEST = 30;
  private static final int MOST_ALIASES = 100;
  private static final String YAML = "YAML 1.2";

  private final Notes notes;
  private final LoadSettings settings;

  Loader(Notes notes) {
    this.notes = notes;
    this.settings =
        LoadSettings.builder()
            .setLabel(notes.file())
            .setUseMarks(true)
            .setCodePointLimit(MOST_CHARACTERS)
            .setMaxAliasesForCollections(MOST_ALIASES)
            .setAllowDuplicateKeys(false)
            .build();
  }

  /** The root; empty if the text is no YAML or beyond a limit, which is then noted. */
  Optional<Node> load(String text) {
    try {
      if (text.length() > MOST_CHARACTERS) {
        start(text.length() + " characters", "at most " + MOST_CHARACTERS);
        return Optional.empty();
      }
      return tooDeep(text) ? Optional.empty() : compose(text);
    } catch (MarkedYamlEngineException e) {
      note(e);
    } catch (YamlEngineException e) {
      start(firstLine(e.getMessage()), YAML);
    }
    return Optional.empty();
  }

  private Optional<Node> compose(String text) {
    Optional<Node> root = new Compose(settings).composeString(text);
    if (root.filter(node -> !Nodes.isEmpty(node)).isEmpty()) {
      start("an empty file", "a scenario that begins with 'lastcopy: 1'");
      return Optional.empty();
    }
    return root.filter(node -> new TreeCheck(notes).holds(node));
  }

  /** The parser's events come without recursion, so depth is counted before nodes are built. */
  private boolean tooDeep(String text) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      depth += event instanceof CollectionStartEvent ? 1 : 0;
      depth -= event instanceof CollectionEndEvent ? 1 : 0;
      if (depth > DEEPEST) {
        String found = "more than " + DEEPEST + " levels of nesting";
        notes.problem(event.getStartMark(), found, "fewer levels", "");
        return true;
      }
    }
    return false;
  }

  private void note(MarkedYamlEngineException e) {
    String problem = firstLine(e.getProblem() == null ? e.getMessage() : e.getProblem());
    boolean tab = problem.contains("TAB") || problem.contains("\\t");
    notes.problem(
        e.getProblemMark().or(e::getContextMark),
        tab ? "a tab used to indent" : "what is no YAML: " + lowerFirst(problem),
        tab ? "spaces" : YAML,
        "");
  }

  private void start(String found, String accepted) {
    notes.problem(Optional.empty(), found, accepted, "");
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("something unreadable");
  }

  private static String lowerFirst(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
