package lastcopy.cli.scenario.yaml;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** Turns text into YAML nodes with positions, within limits that a scenario never needs. */
public final class Loader {
  /** The longest file in characters. */
  public static final int MOST_CHARACTERS = 1_000_000;

  private static final int DEEPEST = 30;
  private static final int MOST_ALIASES = 100;
  private static final int LONGEST_TEXT = 1_000;

  private final Notes notes;
  private final LoadSettings settings;

  /** Where the parser was last. */
  private Optional<Mark> last = Optional.empty();

  /** Notes mistakes into these. */
  public Loader(Notes notes) {
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
  public Optional<Node> load(String text) {
    if (text.length() > MOST_CHARACTERS) {
      start(text.length() + " characters", "at most " + MOST_CHARACTERS);
      return Optional.empty();
    }
    if (hasNoText(text)) {
      return Optional.empty();
    }
    try {
      return canBeBuilt(text) ? compose(text) : Optional.empty();
    } catch (MarkedYamlEngineException e) {
      note(e.getProblemMark().or(e::getContextMark).or(() -> last), e);
    } catch (YamlEngineException | IllegalArgumentException | IndexOutOfBoundsException e) {
      // The parser's own slips, such as a number of a character beyond the last.
      note(last, e);
    }
    return Optional.empty();
  }

  /** The parser reads ahead, and would say of such a character that it is in the first line. */
  private boolean hasNoText(String text) {
    int at = 0;
    int line = 1;
    int start = 0;
    while (at < text.length()) {
      int c = text.codePointAt(at);
      if (isNoText(c)) {
        String found = "the character " + Printable.of(Character.toString(c));
        notes.problem(line, text.codePointCount(start, at) + 1, found, "text", "");
        return true;
      }
      at += Character.charCount(c);
      if (c == '\n') {
        line++;
        start = at;
      }
    }
    return false;
  }

  /** What YAML 1.2 does not let into a file at all. */
  private static boolean isNoText(int c) {
    boolean control = Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r' && c != 0x85;
    return control || (c >= 0xD800 && c <= 0xDFFF) || c == 0xFFFE || c == 0xFFFF;
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
  private boolean canBeBuilt(String text) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      last = event.getEndMark();
      depth += event instanceof CollectionStartEvent ? 1 : 0;
      depth -= event instanceof CollectionEndEvent ? 1 : 0;
      if (depth > DEEPEST) {
        String found = "more than " + DEEPEST + " levels of nesting";
        notes.problem(event.getStartMark(), found, "fewer levels", "");
        return false;
      }
      if (event instanceof ScalarEvent scalar) {
        checkText(scalar);
      }
      tag(event).ifPresent(tag -> noteTag(event, tag));
    }
    return true;
  }

  private void checkText(ScalarEvent event) {
    String text = event.getValue();
    if (text.length() > LONGEST_TEXT) {
      String found = "a text of " + text.length() + " characters";
      notes.problem(event.getStartMark(), found, "at most " + LONGEST_TEXT, "");
    } else if (!Printable.isPlain(text.strip())) {
      String found = Nodes.quote(text.strip()) + ", with what cannot be seen";
      notes.problem(event.getStartMark(), found, "letters, digits, signs and spaces", "");
    }
  }

  private static Optional<String> tag(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return event instanceof CollectionStartEvent collection
        ? collection.getTag()
        : Optional.empty();
  }

  private void noteTag(Event event, String tag) {
    String shown = tag.replace("tag:yaml.org,2002:", "!!");
    notes.problem(
        event.getStartMark(), "the tag " + Nodes.quote(shown), "plain values without tags", "");
  }

  private void note(Optional<Mark> at, RuntimeException e) {
    YamlWords words = YamlWords.of(String.valueOf(e.getMessage()));
    notes.problem(at, words.found(), words.accepted(), "");
  }

  private void start(String found, String accepted) {
    notes.problem(Optional.empty(), found, accepted, "");
  }
}
