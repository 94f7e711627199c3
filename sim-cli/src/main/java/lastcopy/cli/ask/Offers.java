package lastcopy.cli.ask;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.scenario.yaml.Printable;

/** What is asked once the questions are answered: where it goes, and what to do with it. */
public final class Offers {

  static final String WELCOME =
      "A few questions that only you can answer, and a file is made of them. An empty line takes"
          + " what stands in brackets, '<' goes back one question. Ctrl-C ends it, and nothing is"
          + " written.";

  static final String DRAWN = "This is what you have, and what would be a step from it:";

  private static final String YES = "yes";
  private static final String NO = "no";
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
    return name("Where shall it be written?", FILE, Set.of()).orElse(Path.of(FILE));
  }

  /**
   * A name under which something may be written; asked for until there is one.
   *
   * @param none answers that want no file
   */
  private Optional<Path> name(String question, String preset, Set<String> none)
      throws IOException, Input.StoppedException {
    while (true) {
      String name = answer(question, preset);
      if (none.contains(name.toLowerCase(Locale.ROOT))) {
        return Optional.empty();
      }
      try {
        Path file = Path.of(name);
        if (ended || force || !OutputFile.isTaken(file) || replaces(file)) {
          return Optional.of(file);
        }
      } catch (InvalidPathException e) {
        complain(Failures.notAName(name));
      } catch (IOException e) {
        complain("That cannot be written: " + e.getMessage());
      }
    }
  }

  private boolean replaces(Path file) throws IOException, Input.StoppedException {
    boolean told = isYes("There is such a file. Replace it? (yes or no)", NO);
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
      boolean wanted =
          isYes("Compare these layouts now? (yes or no; it takes up to a minute)", YES);
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
    Optional<Path> page = name(question, PAGE, Set.of(NO, "n"));
    if (ended || page.isEmpty()) {
      return List.of();
    }
    List<String> options = new ArrayList<>(List.of("--report", page.get().toString()));
    if (force || mayReplace(page.get())) {
      options.add("--force");
    }
    return options;
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

  /** Asked again until it is one or the other; after the end of a pipe as suggested. */
  private boolean isYes(String question, String preset) throws IOException, Input.StoppedException {
    while (true) {
      String text = answer(question, preset).toLowerCase(Locale.ROOT);
      if (text.equals(YES) || text.equals("y")) {
        return true;
      }
      if (text.equals(NO) || text.equals("n")) {
        return false;
      }
      complain("Say yes or no.");
    }
  }
}
