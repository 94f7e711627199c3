package lastcopy.cli.rates;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists typical values with their sources. */
@Command(
    name = "rates",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "List typical values of drives, places and desks, each with its source.")
public final class RatesCommand implements Callable<Integer> {

  private final Host host;

  @Mixin private JsonOption json;

  @Mixin private PageOptions page;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  /** The command with what it needs of the world around it. */
  public RatesCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    json.prepare(Optional.empty());
    List<Path> written =
        json.write(host, Optional.empty(), RatesText.of(page.on(host)), RatesJson::write);
    Wrote.say(host, written);
    return ExitStatus.DONE;
  }
}
