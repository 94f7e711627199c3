package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.edit.Change;
import lastcopy.cli.edit.LayoutEdit;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;

/**
 * The layout that levers look at.
 *
 * @param tree the file
 * @param studio what it says
 * @param layout the one that is looked at
 */
public record LeverSubject(ScenarioTree tree, Studio studio, Layout layout) {

  private static final String TRIAL = "lastcopy-lever";

  /** The path of something in the layout. */
  List<String> path(String... keys) {
    List<String> path = new ArrayList<>(List.of("layouts", layout.id()));
    path.addAll(List.of(keys));
    return path;
  }

  /** The path of a key of a copy. */
  List<String> path(Copy copy, String... keys) {
    List<String> path = path("copies", copy.id());
    path.addAll(List.of(keys));
    return path;
  }

  /** Whether a copy has a key in the file. */
  boolean has(Copy copy, String... keys) {
    return tree.text(path(copy, keys)).isPresent();
  }

  /** Another value of a key of a copy. */
  Change change(Copy copy, String key, String to) {
    return tree.change(path(copy, key), to);
  }

  /** Another value of something that a feed says. */
  Change changeOfFeed(Copy copy, String key, String to) {
    return tree.change(path(copy, "feed", key), to);
  }

  /** A key less. */
  Change without(Copy copy, String key) {
    List<String> path = path(copy, key);
    return new Change(path, tree.text(path).orElse(""), "");
  }

  /** So much money more, once at the start, beside what a copy takes already. */
  Change once(Copy copy, double money) {
    return tree.change(
        path(copy, "costs", "once"), AmountTexts.number(copy.costs().once() + money));
  }

  /** An id for a deed with one copy, which names the copy where there are several. */
  String id(String lever, Copy copy) {
    return layout.copies().size() == 1 ? lever : lever + "-" + copy.id();
  }

  /** A title for a deed with one copy, which names the copy where there are several. */
  String title(String title, Copy copy) {
    return layout.copies().size() == 1 ? title : title + " (" + copy.id() + ")";
  }

  /** The price of the dearest drive of a set, if each of them has one. */
  static OptionalDouble price(Medium.DriveSet set) {
    boolean all = set.kinds().stream().allMatch(model -> model.price().isPresent());
    return all
        ? set.kinds().stream().mapToDouble(model -> model.price().getAsDouble()).max()
        : OptionalDouble.empty();
  }

  /** What is said of a drive's price. */
  String priceWords(String what, DriveModel model) {
    return model.price().isPresent()
        ? String.format(
            "%s costs what the file says for a %s, %s.",
            what, model.id(), money(model.price().getAsDouble()))
        : String.format("%s has no price, since the file has none for a %s.", what, model.id());
  }

  /** An amount of money with the file's currency. */
  String money(double amount) {
    return studio.currency().map(name -> name + " ").orElse("") + AmountTexts.number(amount);
  }

  /** Whether footage can be deleted or taken by malware at the desk. */
  boolean isDeskCounted() {
    return studio.desk().deletion().isPresent() || studio.desk().malware().isPresent();
  }

  /** Why the reader does not accept what comes of a deed, if it does not. */
  Optional<String> mistake(Deed deed) {
    return deed.isYardstick()
        ? whole(deed).mistake()
        : edit(deed, TRIAL).in(tree).withLayouts(List.of(TRIAL)).mistake();
  }

  /** The layout that comes of a deed, under an id. */
  public LayoutEdit edit(Deed deed, String id) {
    return new LayoutEdit(layout.id(), id, deed.title(), deed.changes());
  }

  /** The whole file with the changes of a yardstick. */
  public ScenarioTree whole(Deed deed) {
    ScenarioTree edited = tree;
    for (Change change : deed.changes()) {
      edited = edited.with(change.path(), change.to());
    }
    return edited;
  }
}
