package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.edit.Change;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Uplink;

/** The line that a copy is fed over carries twice as much. */
final class TwiceTheLink implements Lever {
  private static final String ID = "twice-the-link";
  private static final String TITLE = "Twice the speed of the feed's link";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      Optional<Uplink> uplink = copy.feed().flatMap(Feed::uplink);
      if (uplink.isPresent()) {
        deeds.add(ofUplink(subject, copy, uplink.get()));
      } else {
        subject
            .tree()
            .text(subject.path(copy, "feed", "link"))
            .flatMap(text -> AmountTexts.times(text, 2))
            .ifPresent(to -> deeds.add(ofLink(subject, copy, to)));
      }
    }
    found.addOr(deeds, ID, TITLE, "no feed has a link whose speed the file states");
  }

  private static Deed ofLink(LeverSubject subject, Copy copy, String to) {
    return new Deed(
        subject.id(ID, copy),
        subject.title(TITLE, copy),
        List.of(subject.changeOfFeed(copy, "link", to)),
        List.of("The file has no price for a faster link."),
        false,
        false);
  }

  /** An uplink of its own, since other layouts name the old one. */
  private static Deed ofUplink(LeverSubject subject, Copy copy, Uplink uplink) {
    String name = uplink.id() + "-twice";
    List<String> old = List.of("uplinks", uplink.id());
    String speed =
        AmountTexts.times(subject.tree().text(with(old, "speed")).orElse(""), 2).orElse("");
    String price =
        subject.tree().text(with(old, "price")).map(text -> ", price: " + text).orElse("");
    List<Change> changes =
        List.of(
            new Change(List.of("uplinks", name), "", "{speed: " + speed + price + "}"),
            subject.changeOfFeed(copy, "link", name));
    return new Deed(
        subject.id(ID, copy),
        subject.title(TITLE, copy),
        changes,
        List.of("The file has no price for a faster uplink; it costs what the old one does here."),
        false,
        false);
  }

  private static List<String> with(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }
}
