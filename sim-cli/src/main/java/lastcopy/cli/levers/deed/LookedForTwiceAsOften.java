package lastcopy.cli.levers.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;

/**
 * Somebody who looks by the clock looks twice as often: for failures, or for a feed that stopped.
 */
final class LookedForTwiceAsOften implements Lever {
  private static final String ID = "looked-for-twice-as-often";
  private static final String TITLE = "Looked for failures twice as often";

  @Override
  public void find(LeverSubject subject, Found found) {
    List<Deed> deeds = new ArrayList<>();
    for (Copy copy : subject.layout().copies()) {
      if (copy.repair().noticed() instanceof Delay.Looks looks) {
        String to = "{checked_every: " + AmountTexts.time(looks.periodHours() / 2) + "}";
        deeds.add(
            Deed.of(
                subject.id(ID, copy),
                subject.title(TITLE, copy),
                List.of(subject.change(copy, "noticed", to))));
      }
      OptionalDouble feed = copy.feed().map(Feed::checkedEveryHours).orElse(OptionalDouble.empty());
      if (feed.isPresent()) {
        deeds.add(
            Deed.of(
                "feed-" + subject.id(ID, copy),
                subject.title("Looked at the feed twice as often", copy),
                List.of(
                    subject.changeOfFeed(
                        copy, "checked_every", AmountTexts.time(feed.getAsDouble() / 2)))));
      }
    }
    found.addOr(deeds, ID, TITLE, "nobody looks by the clock");
  }
}
