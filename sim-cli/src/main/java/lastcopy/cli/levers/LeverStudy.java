package lastcopy.cli.levers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.levers.deed.Catalogue;
import lastcopy.cli.levers.deed.Deed;
import lastcopy.cli.levers.deed.Found;
import lastcopy.cli.levers.deed.LeverSubject;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.decide.effect.Alternative;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * A layout, what could be changed about it, and a file that has each change as a layout.
 *
 * @param studio what the file says, over the years asked for
 * @param layout the layout as it is
 * @param found what can be done with it, and what cannot
 * @param whole the file with the layout as it is and one for each deed
 * @param base the layout as it is
 * @param others one for each deed and yardstick, in the order in which they were found
 */
record LeverStudy(
    Studio studio,
    Layout layout,
    Found found,
    ScenarioTree whole,
    Alternative base,
    List<Alternative> others) {

  /**
   * Finds all.
   *
   * @param tree a file that is a valid scenario
   * @param studio what it says
   * @param layout one of its layouts
   * @throws ScenarioException if the changes together are no valid file, such as too large a one
   */
  static LeverStudy of(ScenarioTree tree, Studio studio, Layout layout) throws ScenarioException {
    LeverSubject subject = new LeverSubject(tree, studio, layout);
    Found found = Catalogue.of(subject);
    ScenarioTree whole = tree;
    List<String> ids = new ArrayList<>(List.of(layout.id()));
    Map<String, Alternative> others = new LinkedHashMap<>();
    for (Deed deed : found.deeds()) {
      if (deed.isYardstick()) {
        others.put(deed.id(), yardstick(subject, deed));
      } else {
        String id = id(deed, layout);
        whole = subject.edit(deed, id).in(whole);
        ids.add(id);
      }
    }
    whole = whole.withLayouts(ids);
    Studio changed = whole.scenario().studio();
    for (Deed deed : found.deeds()) {
      others.computeIfAbsent(deed.id(), own -> of(own, changed, id(deed, layout)));
    }
    return new LeverStudy(
        studio,
        layout,
        found,
        whole,
        of(layout.id(), changed, layout.id()),
        List.copyOf(others.values()));
  }

  private static Alternative yardstick(LeverSubject subject, Deed deed) throws ScenarioException {
    Studio other = subject.whole(deed).scenario().studio();
    return of(deed.id(), other, subject.layout().id());
  }

  private static Alternative of(String id, Studio studio, String layout) {
    return new Alternative(
        id,
        studio,
        studio.layouts().stream()
            .filter(each -> each.id().equals(layout))
            .findFirst()
            .orElseThrow());
  }

  /** The id of the layout of a deed, which is that of the deed unless the base has it. */
  private static String id(Deed deed, Layout base) {
    return deed.id().equals(base.id()) ? deed.id() + "-changed" : deed.id();
  }

  Deed deed(String id) {
    return found.deeds().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }
}
