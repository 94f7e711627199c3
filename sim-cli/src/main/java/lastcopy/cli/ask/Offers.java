package lastcopy.cli.ask;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.scenario.Printable;

/** What is asked once the questions are answered: where it goes, and what to do with it. */
public final class Offers {

  static final String WELCOME =
      "A few questions that only you can answer, and a file is made of them. An empty line takes"
          + " what stands in brackets, '<' goes back one question. Ctrl-C ends it, and nothing is"
          + " written.";

  static final String DRAWN = "This is what you have, and what would be a step from it:";

  private static final String FILE = "studio.yaml";
  private static final String PAGE = "studio.html";

  private final Input input;
  private final PrintStream out;
  private final boolean force;
  private boolean ended;
  private Optional<Path> replaced = Optional.empty();

  /** Runs another command of this program. */
  @FunctionalInterface
  public interface Runner {
    /** Runs a command line and returns its status. */
    int run(String... line);
  }

  /**
   * Nothing is offered yet.
   *
   * @param ended whether a pipe has ended, so that nobody is there to answer
   */
  Offers(Input input, PrintStream out, boolean ended, boolean force) {
    this.input = input;
    this.out = out;
    this.ended = ended;
    this.force = force;
  }

  /** Where it goes, if the command line does not say. */
  Path file() throws IOException, Input.StoppedException {
    while (true) {
      String name = answer("Where shall it be written?", FILE);
      try {
        Path file = Path.of(name);
        if (ended || force || !OutputFile.isTaken(file) || replaces(file)) {
          return file;
        }
      } catch (InvalidPathException e) {
        complain(Failures.notAName(name));
      } catch (IOException e) {
        complain("That cannot be written: " + e.getMessage());
      }
    }
  }

  private boolean replaces(Path file) throws IOException, Input.StoppedException {
    boolean told = isYes(answer("There is such a file. Replace it? (yes or no)", "no"));
    replaced = told ? Optional.of(file) : Optional.empty();
    return told;
  }

  /** Whether somebody said that a file may be replaced. */
  boolean mayReplace(Path file) {
    return replaced.filter(file::equals).isPresent();
  }

  /** Compares and writes the page, if somebody wants it. */
  int after(Path file, Runner runner) throws IOException, Input.StoppedException {
    if (ended) {
      next(file);
      return ExitStatus.DONE;
    }
    try {
      boolean wanted = isYes(answer("Compare these layouts now? (it takes up to a minute)", "yes"));
      if (!wanted || ended) {
        next(file);
        return ExitStatus.DONE;
      }
      List<String> line = new ArrayList<>(List.of("compare", file.toString()));
      line.addAll(List.of("--precision", "5%"));
      line.addAll(page());
      input.close();
      out.println();
      out.flush();
      return runner.run(line.toArray(String[]::new));
    } catch (Input.StoppedException e) {
      out.flush();
      return ExitStatus.INTERRUPTED;
    }
  }

  private List<String> page() throws IOException, Input.StoppedException {
    String question = "And a page for whoever has to agree? (the name of a file, or no)";
    String name = answer(question, PAGE);
    if (ended || name.equalsIgnoreCase("no") || name.equalsIgnoreCase("n")) {
      return List.of();
    }
    Path page = Path.of(name);
    if (!OutputFile.isTaken(page)) {
      return List.of("--report", name);
    }
    return isYes(answer("There is such a file. Replace it? (yes or no)", "no"))
        ? List.of("--report", name, "--force")
        : List.of();
  }

  private void next(Path file) {
    String name = Printable.of(file.toString());
    out.println("\nTo see what it says:  lastcopy inspect " + name);
    out.println("To compare:           lastcopy compare " + name + " --report " + PAGE);
  }

  private String answer(String question, String preset) throws IOException, Input.StoppedException {
    if (ended) {
      return preset;
    }
    out.print("\n" + Wrap.lines("", "", question));
    Optional<String> line = input.line("  [" + preset + "] > ");
    ended = line.isEmpty();
    String text = line.orElse("").strip();
    return text.isEmpty() ? preset : text;
  }

  private void complain(String sentence) {
    out.print(Wrap.lines("  ", "  ", Printable.of(sentence)));
  }

  private static boolean isYes(String text) {
    return text.equalsIgnoreCase("yes") || text.equalsIgnoreCase("y");
  }
}
