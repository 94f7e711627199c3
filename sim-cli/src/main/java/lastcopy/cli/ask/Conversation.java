package lastcopy.cli.ask;

import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.scenario.yaml.Printable;

/** Asks one question after the other, and goes back if told so. */
final class Conversation {

  private static final String EDGE = "----------------------------------------";

  private final Input input;
  private final PrintStream out;
  private final List<OwnerQuestion> table;
  private boolean ended;

  Conversation(Input input, PrintStream out, List<OwnerQuestion> table) {
    this.input = input;
    this.out = out;
    this.table = List.copyOf(table);
  }

  /**
   * Asks until all is answered. After the end of a pipe every question is answered as suggested.
   *
   * @throws Input.StoppedException if a person ends it
   * @throws IOException if nothing can be read
   */
  Answers ask() throws Input.StoppedException, IOException {
    Answers answers = Answers.NONE;
    int at = 0;
    while (at < table.size()) {
      OwnerQuestion question = table.get(at);
      if (!question.asked().test(answers)) {
        answers = answers.without(question.id());
        at++;
        continue;
      }
      Optional<Answers.Given> given = ended ? suggested(question, answers) : ask(at, answers);
      if (given.isPresent()) {
        answers = answers.with(question.id(), given.get());
        at++;
      } else {
        at = before(at, answers);
      }
    }
    return answers;
  }

  /** Whether answers came from a pipe that ended. */
  boolean ended() {
    return ended;
  }

  /** One question, until its answer is one; empty if it goes back. */
  private Optional<Answers.Given> ask(int at, Answers answers)
      throws Input.StoppedException, IOException {
    OwnerQuestion question = table.get(at);
    Answers.Given preset = preset(question, answers);
    out.print(screen(at, answers, preset));
    while (true) {
      Optional<String> line = input.line("  [" + typed(question, preset) + "] > ");
      ended = line.isEmpty();
      if (ended) {
        out.println("\nThe answers end here; all others are taken as suggested.");
      }
      String text = line.orElse("").strip();
      if (text.isEmpty()) {
        return Optional.of(preset);
      }
      if (text.equals(OwnerQuestion.BACK)) {
        return Optional.empty();
      }
      Parsed parsed = question.read(answers, text);
      if (parsed.value().isPresent()) {
        return Optional.of(new Answers.Given(parsed.value().get(), true));
      }
      out.print(Wrap.lines("  ", "  ", Printable.of(parsed.complaint())));
    }
  }

  private String screen(int at, Answers answers, Answers.Given preset) {
    OwnerQuestion question = table.get(at);
    StringBuilder screen = new StringBuilder("\n" + EDGE + " " + count(at, answers) + "\n");
    screen.append(Wrap.lines("", "", question.words()));
    question.reply().choices().forEach(choice -> screen.append("    ").append(choice).append('\n'));
    String why =
        preset.own()
            ? "[" + typed(question, preset) + "] is what you said before."
            : question.reason().apply(answers);
    return screen.append(Wrap.lines("  ", "  ", why)).toString();
  }

  private static String typed(OwnerQuestion question, Answers.Given preset) {
    return question.reply().typed(preset.value());
  }

  /** Of those that are asked, as far as is known by now. */
  private String count(int at, Answers answers) {
    return asked(0, at + 1, answers) + " of " + asked(0, table.size(), answers);
  }

  private long asked(int from, int to, Answers answers) {
    return IntStream.range(from, to).filter(i -> isAsked(table.get(i), answers)).count();
  }

  /** What depends on an answer that is still to come is counted. */
  private static boolean isAsked(OwnerQuestion question, Answers answers) {
    try {
      return question.asked().test(answers);
    } catch (IllegalStateException e) {
      return true;
    }
  }

  private int before(int at, Answers answers) {
    return IntStream.range(0, at)
        .map(i -> at - 1 - i)
        .filter(i -> table.get(i).asked().test(answers))
        .findFirst()
        .orElse(at);
  }

  /** What was said before, as long as it still is an answer. */
  private static Answers.Given preset(OwnerQuestion question, Answers answers) {
    return Optional.ofNullable(answers.given().get(question.id()))
        .filter(given -> given.own() && question.read(answers, given.value()).value().isPresent())
        .orElseGet(() -> new Answers.Given(question.preset().apply(answers), false));
  }

  private static Optional<Answers.Given> suggested(OwnerQuestion question, Answers answers) {
    return Optional.of(preset(question, answers));
  }
}
