package lastcopy.cli.scenario.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.cli.scenario.value.Known;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.DriveModel;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads which drives a copy has: a number of one model, or a list of such for unlike drives. */
final class DriveListReader {
  private static final Pattern DRIVES = Pattern.compile("(\\d{1,9})\\s*[x×]\\s*(\\S.*)");
  private static final int MOST_DRIVES = 1_000;
  private static final String EXAMPLE = "a number and a model, such as 2 x desk-8tb";
  private static final String LIST =
      "a list of numbers and models, such as [1 x desk-8tb, 1 x used-4tb]";

  private final Notes notes;
  private final Known known;
  private final Values values;

  DriveListReader(Notes notes, Known known) {
    this.notes = notes;
    this.known = known;
    this.values = new Values(notes);
  }

  /**
   * The model of each drive in the order listed; empty if one could not be read, which is noted.
   */
  Optional<List<DriveModel>> read(Node node) {
    if (!(node instanceof SequenceNode)) {
      return some(node);
    }
    List<DriveModel> all = new ArrayList<>();
    boolean complete = true;
    for (Node item : Nodes.items(notes, node, LIST)) {
      Optional<List<DriveModel>> some = some(item);
      complete &= some.isPresent();
      some.ifPresent(all::addAll);
    }
    if (all.size() > MOST_DRIVES) {
      notes.problem(
          node, all.size() + " drives in all", LIST + "; from 1 to " + MOST_DRIVES + " drives");
      return Optional.empty();
    }
    return complete && !all.isEmpty() ? Optional.of(all) : Optional.empty();
  }

  private Optional<List<DriveModel>> some(Node node) {
    Matcher matcher = DRIVES.matcher(Nodes.text(node));
    if (!matcher.matches()) {
      values.wrong(node, EXAMPLE);
      return Optional.empty();
    }
    int drives = Integer.parseInt(matcher.group(1));
    if (drives < 1 || drives > MOST_DRIVES) {
      values.wrong(node, EXAMPLE + "; from 1 to " + MOST_DRIVES + " drives");
      return Optional.empty();
    }
    return model(node, matcher.group(2)).map(model -> Collections.nCopies(drives, model));
  }

  private Optional<DriveModel> model(Node node, String name) {
    DriveModel model = known.models().get(name);
    if (model == null) {
      List<String> names = List.copyOf(known.models().keySet());
      String accepted = names.isEmpty() ? "a model under 'drives'" : String.join(", ", names);
      String found = "'" + name + "', which is no drive model";
      notes.problem(node, found, accepted, Spelling.nearest(name, names));
    }
    return Optional.ofNullable(model);
  }
}
