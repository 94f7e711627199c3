package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Units;

/** A copy that is fed more seldom than every day is fed every day. */
final class Nightly implements Lever {
  private static final String ID = "fed-every-day";
  private static final String TITLE = "Fed every day";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    boolean turns = false;
    for (Copy copy : subject.layout().copies()) {
      boolean seldom =
          copy.feed()
              .filter(
                  feed ->
                      feed.schedule() instanceof Feed.Every every
                          && every.everyHours() > Units.HOURS_PER_DAY)
              .isPresent();
      turns |= copy.rotation().isPresent();
      if (seldom && copy.rotation().isEmpty()) {
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title(TITLE, copy),
                List.of(subject.changeOfFeed(copy, "every", "1 day"))));
      }
    }
    String why =
        turns ? "its drives take turns, each by hand" : "no copy is fed more seldom than that";
    found.addOr(deeds, ID, TITLE, why);
  }
}
