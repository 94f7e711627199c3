package lastcopy.cli.option;

import java.util.List;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which layout a command is about. */
public final class LayoutOption {

  @Option(
      names = "--layout",
      paramLabel = "ID",
      description = "Which layout; may be left out where there is one only.")
  private String id;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /**
   * The layout asked for, or the only one.
   *
   * @throws ParameterException if there is none of that name, or several and none is named
   */
  public Layout in(Studio studio) {
    List<String> ids = studio.layouts().stream().map(Layout::id).toList();
    if (id == null && ids.size() == 1) {
      return studio.layouts().get(0);
    }
    String there = "there is: " + String.join(", ", ids);
    if (id == null) {
      throw wrong("which layout? Name one with --layout; " + there);
    }
    int at = ids.indexOf(id);
    if (at < 0) {
      String near = Spelling.nearest(id, ids);
      String hint = near.isEmpty() ? "" : " Did you mean '" + near + "'?";
      throw wrong("no layout is named '" + id + "'; " + there + "." + hint);
    }
    return studio.layouts().get(at);
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
