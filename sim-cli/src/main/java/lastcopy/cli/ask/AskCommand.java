package lastcopy.cli.ask;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Asks what an owner knows, and writes a scenario. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Ask what only an owner knows, and write a scenario with today's layout and a few that are"
          + " a step from it.",
      "An empty line takes what is suggested, '<' goes back. Answers may come from a pipe, a line"
          + " each; after its end the rest is taken as suggested."
    })
public final class AskCommand implements Callable<Integer> {

  private final Host host;
  private final Function<Host, Input> inputs;
  private final Offers.Runner runner;

  @Option(names = "--write", paramLabel = "FILE", description = "Where the scenario goes.")
  private Path write;

  @Option(names = "--force", description = "Let --write replace a file.")
  private boolean force;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  /**
   * The command.
   *
   * @param inputs opens what is typed
   * @param runner runs another command
   */
  public AskCommand(Host host, Function<Host, Input> inputs, Offers.Runner runner) {
    this.host = host;
    this.inputs = inputs;
    this.runner = runner;
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    if (write != null) {
      files().checkNew(write);
    }
    try (Input input = new InterruptibleInput(inputs.apply(host), host.interruption())) {
      return converse(input);
    } catch (Input.StoppedException e) {
      host.err().println("lastcopy: stopped; nothing was written");
      return ExitStatus.INTERRUPTED;
    }
  }

  private int converse(Input input) throws IOException, RefusedException, Input.StoppedException {
    PrintStream out = host.out();
    out.print(Wrap.lines("", "", Offers.WELCOME));
    Conversation conversation = new Conversation(input, out, QuestionTable.all());
    Answers answers = conversation.ask();
    List<LayoutSketch> layouts = Steps.of(answers);
    out.print("\n" + Wrap.lines("", "", Offers.DRAWN) + "\n");
    layouts.forEach(layout -> out.println(Picture.of(layout, answers.text("drive-size"))));
    String text = checked(ScenarioPage.of(answers, layouts));
    Offers offers = new Offers(input, out, conversation.ended(), force);
    Path file = write == null ? offers.file() : write;
    OutputFile target = new OutputFile(Optional.empty(), force || offers.mayReplace(file));
    target.checkNew(file);
    target.write(file, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    out.flush();
    Wrote.say(host, List.of(file));
    return offers.after(file, runner);
  }

  private OutputFile files() {
    return new OutputFile(Optional.empty(), force);
  }

  /** Nothing is written that the other commands would not read. */
  private static String checked(String text) {
    try {
      ScenarioReader.parse("the scenario", text);
      return text;
    } catch (ScenarioException e) {
      throw new IllegalStateException("a scenario that cannot be read: " + e.problems(), e);
    }
  }
}
