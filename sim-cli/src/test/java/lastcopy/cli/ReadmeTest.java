package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the README shows and tells: its pictures are those of the stored output of its demo, and its
 * tour and recipes can be gone through line by line.
 *
 * <p>{@link #RENEW} makes the pictures anew, with a browser; then the figures in their alternative
 * texts are to be changed by hand.
 *
 * <p>Sabotage seen red: a figure in an alternative text, a letter in the stored output, an option
 * that there is not, a quoted word that is not printed, a recipe for a scenario that there is not.
 */
class ReadmeTest {

  private static final String RENEW =
      "mvn -o -pl sim-cli -am test -Dtest=ReadmeTest -Dsurefire.failIfNoSpecifiedTests=false"
          + " -Dpictures=renew";

  private static final Path ROOT = Path.of("..");
  private static final Path SCENARIOS = ROOT.resolve("scenarios");
  private static final Path PICTURES = SCENARIOS.resolve("pictures");
  private static final String DEMO = "harbour-mirror-or-far-copy";
  private static final long MOST_BYTES = 100_000;

  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:,[0-9]{3})*");
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");
  private static final String LAUNCHER = "sim-cli/lastcopy ";

  @TempDir private Path folder;

  private InputStream before;

  /** Nobody is there to answer. */
  @BeforeEach
  void leaveAlone() throws IOException {
    before = System.in;
    System.setIn(new ByteArrayInputStream(new byte[0]));
    Files.createDirectory(folder.resolve("scenarios"));
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve("scenarios").resolve(file.getFileName()));
      }
    }
  }

  @AfterEach
  void comeBack() {
    System.setIn(before);
  }

  private static String readme() throws IOException {
    return Files.readString(ROOT.resolve("README.md"));
  }

  private static String stored() throws IOException {
    return Files.readString(SCENARIOS.resolve(DEMO + ".txt"));
  }

  private static boolean renew() {
    return System.getProperty("pictures", "").equals("renew");
  }

  /** The answer and the table: up to the second empty line after the rule. */
  @Test
  void thePictureOfTheAnswerIsTheStoredOutput() throws IOException {
    List<String> lines = stored().lines().toList();
    int rule = lines.indexOf("-".repeat(80));
    int end = rule + lines.subList(rule, lines.size()).indexOf("");
    String title = String.join(" ", lines.subList(0, lines.indexOf("")));
    String picture = AnswerPicture.of(title, lines.subList(0, end));
    Path file = PICTURES.resolve("answer.svg");
    if (renew()) {
      Files.createDirectories(PICTURES);
      Files.writeString(file, picture);
    }
    assertThat(Files.readString(file)).as("to make it anew: " + RENEW).isEqualTo(picture);
    assertThat(Files.size(file)).isLessThanOrEqualTo(MOST_BYTES);
  }

  /** Every figure told of the picture is one of the answer. */
  @Test
  void theAlternativeTextOfTheAnswerHasItsFigures() throws IOException {
    List<String> printed = numbers(stored().substring(0, stored().indexOf("Not counted")));
    assertThat(numbers(alternative("answer.svg"))).hasSizeGreaterThan(3).isSubsetOf(printed);
  }

  /** The page tells of 1,000 studios what the output tells of 10,000; by hand. */
  @Test
  void theAlternativeTextOfThePageHasItsFigures() throws IOException {
    List<String> ofThousand =
        Stream.concat(
                numbers(stored().substring(0, stored().indexOf("Not counted"))).stream()
                    .map(number -> number.replace(",", ""))
                    .map(number -> "" + Math.round(Double.parseDouble(number) / 10)),
                Stream.of("1,000", "5"))
            .toList();
    assertThat(numbers(alternative("page.png")))
        .as("to make it anew: " + RENEW)
        .hasSizeGreaterThan(3)
        .isSubsetOf(ofThousand);
  }

  @Test
  void thePictureOfThePageIsSmall() throws IOException {
    Path file = PICTURES.resolve("page.png");
    if (renew()) {
      Path page = folder.resolve("page.html");
      Path demo = SCENARIOS.resolve(DEMO + ".yaml");
      Ran.of("compare", demo.toString(), "--precision", "5%", "--report", page.toString()).done();
      try (Browser browser = Browser.start()) {
        Files.write(file, SmallPicture.of(browser.picture(page, 1000, 700)));
      }
    }
    assertThat(Files.readAllBytes(file)).startsWith(0x89, 'P', 'N', 'G');
    assertThat(Files.size(file)).isLessThanOrEqualTo(MOST_BYTES);
  }

  private static String alternative(String picture) throws IOException {
    return Pattern.compile("!\\[([^]]+)]\\(scenarios/pictures/" + Pattern.quote(picture) + "\\)")
        .matcher(readme())
        .results()
        .map((MatchResult found) -> found.group(1))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group).toList();
  }

  @Test
  void theTourCanBeGoneThrough() throws Exception {
    assertThat(follow("## A tour of five minutes")).isEqualTo(7);
  }

  @Test
  void theRecipesWork() throws Exception {
    assertThat(follow("## Three recipes")).isGreaterThanOrEqualTo(5);
  }

  /**
   * Carries out what is indented, paragraph by paragraph, and looks for what is quoted below it in
   * what was printed or written.
   *
   * @return how many lines were carried out
   */
  private int follow(String heading) throws Exception {
    String rest = readme().substring(readme().indexOf(heading) + heading.length());
    String section = rest.substring(0, rest.indexOf("\n## "));
    String shown = "";
    int lines = 0;
    for (String paragraph : section.split("\n\n", -1)) {
      if (paragraph.startsWith("    ")) {
        shown = "";
        for (String line : paragraph.lines().map(String::strip).toList()) {
          shown += carriedOut(line);
          lines++;
        }
      } else {
        for (String quoted : quoted(paragraph)) {
          assertThat(plain(shown)).contains(quoted);
        }
      }
    }
    return lines;
  }

  private static List<String> quoted(String paragraph) {
    return QUOTED.matcher(plain(paragraph)).results().map(m -> m.group(1)).toList();
  }

  private static String plain(String text) {
    return text.replace("&quot;", "'").replaceAll("\\s+", " ");
  }

  private String carriedOut(String line) throws Exception {
    if (!line.startsWith(LAUNCHER)) {
      return shell(line);
    }
    List<String> words = new ArrayList<>();
    for (String word : line.substring(LAUNCHER.length()).split(" ", -1)) {
      words.add(word.matches("[\\w/-]+\\.(yaml|html)") ? folder.resolve(word).toString() : word);
    }
    String printed = Ran.of(words.toArray(String[]::new)).done();
    String written =
        words.stream()
            .filter(word -> word.endsWith(".html"))
            .map(ReadmeTest::text)
            .collect(Collectors.joining());
    return printed + written;
  }

  private static String text(String page) {
    try {
      return Files.readString(Path.of(page)).replaceAll("<[^>]*>", "");
    } catch (IOException e) {
      throw new AssertionError(page, e);
    }
  }

  private String shell(String line) throws Exception {
    Process process =
        new ProcessBuilder("sh", "-c", line)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(line + ": " + printed).isZero();
    return printed;
  }
}
