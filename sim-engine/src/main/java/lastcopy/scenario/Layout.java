package lastcopy.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A storage layout: a list of copies, the first of which is the working copy.
 *
 * @param id the name in the file
 * @param title the title for reports
 * @param copies at least one; the first has no feed, every other has one, feeds form no circle, and
 *     a box stands in one place
 * @param cardsKeepHours how long camera cards hold a shoot after its offload, if they do
 * @param costs whatever else it takes, apart from its copies
 */
public record Layout(
    String id, String title, List<Copy> copies, OptionalDouble cardsKeepHours, Costs costs) {

  /** Copies the list and checks the feeds. */
  public Layout {
    Require.text(id, "layout");
    Require.text(title, "title");
    Require.present(costs, "costs");
    copies = List.copyOf(copies);
    Require.that(!copies.isEmpty(), "layout " + id + " needs at least one copy");
    Require.unique(copies.stream().map(Copy::id).toList(), "copy");
    cardsKeepHours.ifPresent(hours -> Require.above(hours, 0, "cards: keep"));
    checkFeeds(id, copies);
    checkBoxes(id, copies);
  }

  /** A layout that takes nothing beside its copies. */
  public Layout(String id, String title, List<Copy> copies, OptionalDouble cardsKeepHours) {
    this(id, title, copies, cardsKeepHours, Costs.NONE);
  }

  /** Makes a layout of that id with the defaults of the scenario file. */
  public static LayoutBuilder builder(String id) {
    return new LayoutBuilder(id);
  }

  /** A layout of that id and title, without cards. */
  public static Layout of(String id, Copy... copies) {
    return new Layout(id, id, List.of(copies), OptionalDouble.empty());
  }

  /** The copy that receives each shoot at its offload. */
  public Copy workingCopy() {
    return copies.get(0);
  }

  /** The place in the list of the copy of that id, or −1. */
  public int indexOf(String copyId) {
    for (int i = 0; i < copies.size(); i++) {
      if (copies.get(i).id().equals(copyId)) {
        return i;
      }
    }
    return -1;
  }

  /** A box stands in one place. */
  private static void checkBoxes(String layout, List<Copy> copies) {
    Map<String, String> places = new HashMap<>();
    for (Copy copy : copies) {
      String here = copy.place().id();
      String there = copy.box().map(box -> places.putIfAbsent(box.id(), here)).orElse(here);
      Require.that(
          there == null || there.equals(here),
          String.format(
              "the box %s of layout %s stands in one place, not in %s and %s",
              copy.box().map(Box::id).orElse(""), layout, there, here));
    }
  }

  private static void checkFeeds(String layout, List<Copy> copies) {
    Require.that(
        copies.get(0).feed().isEmpty(), "the working copy of layout " + layout + " has no feed");
    Map<String, Copy> byId =
        copies.stream().collect(Collectors.toMap(Copy::id, Function.identity()));
    for (Copy copy : copies.subList(1, copies.size())) {
      int hops = 0;
      for (Copy at = copy; at.feed().isPresent(); at = byId.get(at.feed().get().from())) {
        String source = at.feed().get().from();
        Require.that(byId.containsKey(source), "no copy is named " + source);
        Require.that(++hops <= copies.size(), "feeds of layout " + layout + " form a circle");
      }
      Require.that(hops > 0, "copy " + copy.id() + " of layout " + layout + " needs a feed");
    }
  }
}
