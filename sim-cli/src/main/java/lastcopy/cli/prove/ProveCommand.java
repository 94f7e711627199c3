package lastcopy.cli.prove;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.experiment.Progress;
import lastcopy.prove.Check;
import lastcopy.prove.Finding;
import lastcopy.prove.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Holds the engine against published and exact values, here and now. */
@Command(
    name = "prove",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Hold the engine against published and exact values, each with its source.",
    footer = {"", "Exit status: 0 if every line holds, 1 otherwise, 130 interrupted."})
public final class ProveCommand implements Callable<Integer> {

  private final Host host;
  private final Supplier<List<Check>> checks;

  @Mixin private LuckOptions luck;

  @Mixin private JsonOption json;

  @Mixin private PageOptions look;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public ProveCommand(Host host, Supplier<List<Check>> checks) {
    this.host = host;
    this.checks = checks;
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    json.prepare(Optional.empty());
    Proof proof = new Proof(luck.seed(), luck.threads());
    ProveText page = new ProveText(look.on(host));
    say(page.head());
    List<Check> all = checks.get();
    List<Finding> findings = proof.of(all, finding -> say(page.next(finding)), watched());
    boolean finished = findings.size() == all.size();
    List<Path> written =
        json.write(
            host,
            Optional.empty(),
            page.end(proof, findings, all.size()),
            out -> ProveJson.write(proof, findings, finished, out));
    Wrote.say(host, written);
    if (!finished) {
      return ExitStatus.INTERRUPTED;
    }
    return Proof.holds(findings) ? ExitStatus.DONE : ExitStatus.FAILED;
  }

  private Progress watched() {
    return new Progress() {
      @Override
      public void merged(String layout, long histories, double precision, double share) {
        // Lines are told as they are found.
      }

      @Override
      public boolean cancelled() {
        return host.interruption().asked();
      }
    };
  }

  /** At once, since the whole list takes a while. */
  private void say(String lines) {
    if (!json.alone()) {
      host.out().print(lines);
      host.out().flush();
    }
  }
}
