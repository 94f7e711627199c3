package lastcopy.cli.scenario.value;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Box;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Place;
import lastcopy.scenario.Uplink;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What the copies of a file may name.
 *
 * @param places by name; others may be named too, unless they look like a slip
 * @param boxes by name
 * @param uplinks by name
 * @param models by name
 */
public record Known(
    Map<String, Place> places,
    Map<String, Box> boxes,
    Map<String, Uplink> uplinks,
    Map<String, DriveModel> models) {

  /** The place of a name: a place without mishaps needs no entry. */
  public Place place(Notes notes, Node node, String name) {
    Place place = places.get(name);
    if (place != null) {
      return place;
    }
    String near = Spelling.nearest(name, places.keySet());
    if (!near.isEmpty() && !Spelling.sameSeries(name, near)) {
      String found = Nodes.describe(node) + ", which is no place of this file but almost one";
      String accepted = String.join(", ", places.keySet()) + ", or a name less like them";
      notes.problem(node, found, accepted, near);
    }
    return new Place(name, List.of());
  }

  /** The box of a name, noted if there is none. */
  public Optional<Box> box(Values values, Node node) {
    return values.reference(node, "box", List.copyOf(boxes.keySet())).map(boxes::get);
  }
}
