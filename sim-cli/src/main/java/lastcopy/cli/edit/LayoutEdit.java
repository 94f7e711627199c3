package lastcopy.cli.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * A layout that is another one with some changes.
 *
 * @param base id of the layout that is changed
 * @param id of the new one
 * @param title of the new one
 * @param changes below the base layout, or of what stands beside layouts; the latter hold for all
 *     layouts, so that only what is new there leaves the others as they are
 */
public record LayoutEdit(String base, String id, String title, List<Change> changes) {

  /** Copies the list. */
  public LayoutEdit {
    changes = List.copyOf(changes);
  }

  /** The tree with the new layout behind its others; the base stays as it is. */
  public ScenarioTree in(ScenarioTree tree) {
    ScenarioTree edited =
        tree.copied(List.of("layouts", base), List.of("layouts", id))
            .with(List.of("layouts", id, "title"), TreeTexts.quoted(title));
    for (Change change : changes) {
      List<String> path = own(change.path());
      edited = change.to().isEmpty() ? edited.without(path) : edited.with(path, change.to());
    }
    return edited;
  }

  /** Whether all of its changes are below its layout. */
  public boolean isWithinLayout() {
    return changes.stream().allMatch(change -> isBelowBase(change.path()));
  }

  private boolean isBelowBase(List<String> path) {
    return path.size() > 1 && path.get(0).equals("layouts") && path.get(1).equals(base);
  }

  private List<String> own(List<String> path) {
    if (!isBelowBase(path)) {
      return path;
    }
    List<String> own = new ArrayList<>(path);
    own.set(1, id);
    return own;
  }
}
