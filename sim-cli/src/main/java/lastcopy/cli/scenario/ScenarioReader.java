package lastcopy.cli.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.scenario.part.Limits;
import lastcopy.cli.scenario.part.StudioReader;
import lastcopy.cli.scenario.yaml.Loader;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.cli.scenario.yaml.Ranges;
import lastcopy.cli.scenario.yaml.TreeCheck;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a scenario file of format 1, written in YAML 1.2. */
public final class ScenarioReader {
  /** More than any text within the limit of characters takes in UTF-8. */
  private static final int MOST_BYTES = 4 * Loader.MOST_CHARACTERS;

  /** Deviates so far out that hardly any world lies beyond. */
  private static final double FAR = 4;

  private ScenarioReader() {}

  /**
   * Reads a file.
   *
   * @param file text in UTF-8, at most a million characters
   * @throws ScenarioException if it is no valid scenario; it knows every mistake of the file
   * @throws IOException if it cannot be read at all
   */
  public static Scenario read(Path file) throws ScenarioException, IOException {
    return parse(file.toString(), textOf(file));
  }

  private static String textOf(Path file) throws ScenarioException, IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    }
    return decode(file.toString(), bytes);
  }

  /**
   * The values of a file that is a valid scenario, with their places, to be edited.
   *
   * @throws ScenarioException if it is none; it knows every mistake of the file
   * @throws IOException if it cannot be read at all
   */
  public static Node tree(Path file) throws ScenarioException, IOException {
    return tree(file.toString(), textOf(file));
  }

  /**
   * The same of a text.
   *
   * @param name what messages call the file
   * @throws ScenarioException if it is none; it knows every mistake of the text
   */
  public static Node tree(String name, String text) throws ScenarioException {
    parse(name, text);
    return new Loader(new Notes(name)).load(text).orElseThrow();
  }

  private static String decode(String name, byte[] bytes) throws ScenarioException {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      Notes notes = new Notes(name);
      notes.problem(Optional.empty(), "bytes that are no text in UTF-8", "YAML 1.2 in UTF-8", "");
      throw new ScenarioException(notes.problems());
    }
  }

  /**
   * Reads a text.
   *
   * @param name what messages call the file
   * @param text the scenario
   * @throws ScenarioException if it is no valid scenario; it knows every mistake of the text
   */
  public static Scenario parse(String name, String text) throws ScenarioException {
    Notes notes = new Notes(name);
    return of(new Loader(notes).load(text), notes);
  }

  /**
   * Reads values that were edited.
   *
   * @param name what messages call the file
   * @throws ScenarioException if they are no valid scenario; it knows every mistake
   */
  public static Scenario of(String name, Node root) throws ScenarioException {
    Notes notes = new Notes(name);
    return of(Optional.of(root).filter(node -> new TreeCheck(notes).holds(node)), notes);
  }

  private static Scenario of(Optional<Node> root, Notes notes) throws ScenarioException {
    Optional<CandidateReader> open = root.map(node -> CandidateReader.of(notes, node));
    Optional<PossibleStudios> studios =
        open.map(CandidateReader::today)
            .flatMap(
                node ->
                    notes.build(node, () -> studios(node, notes, notes.file())).flatMap(s -> s));
    if (!notes.hasProblems()) {
      open.ifPresent(choices -> ChoiceCheck.of(choices, notes));
    }
    List<Problem> problems = notes.problems();
    if (!problems.isEmpty()) {
      throw new ScenarioException(problems);
    }
    return new Scenario(studios.orElseThrow(), notes.defaults(), open.orElseThrow().open());
  }

  /**
   * The layouts of values that are a valid scenario, with their choices.
   *
   * @param name what messages call the file
   */
  public static CandidateReader candidates(String name, Node root) {
    return CandidateReader.of(new Notes(name), root);
  }

  /** Also what lies far above the ranges must not be absurdly much to compute. */
  private static Optional<PossibleStudios> studios(Node root, Notes notes, String name) {
    StudioReader reader = new StudioReader(notes);
    Optional<PossibleStudios> read =
        reader
            .read(root)
            .map(
                studio ->
                    new PossibleStudios(
                        studio, notes.ranges().unknowns(root), point -> world(root, name, point)));
    notes.ranges().limit(notes);
    read.map(studios -> studios.isOne() ? studios.central() : studios.atAll(FAR))
        .ifPresent(studio -> reader.limit(root, studio));
    return read;
  }

  /** The file with values for its ranges, which has no mistakes by now. */
  private static Studio world(Node root, String name, double[] point) {
    Notes notes = new Notes(name, Ranges.in(point));
    Optional<Studio> studio = new StudioReader(notes).read(root);
    if (studio.isEmpty() || notes.hasProblems()) {
      throw new IllegalStateException("no world at a point: " + notes.problems());
    }
    return studio.get();
  }

  /** The same of studios some rates of which are not known. */
  public static Optional<String> excess(PossibleStudios studios) {
    return excess(studios.isOne() ? studios.central() : studios.atAll(FAR));
  }

  /**
   * What of a studio, such as one over other years, is absurdly much to compute: its keys from the
   * top of the file, and what is too much, in words.
   */
  public static Optional<String> excess(Studio studio) {
    return Limits.of(studio).stream()
        .findFirst()
        .map(
            excess ->
                String.format(
                    "%s: %s; accepted: %s",
                    String.join(".", excess.path()), excess.found(), excess.accepted()));
  }
}
