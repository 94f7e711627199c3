package lastcopy.history.event.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import lastcopy.history.History;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Desk;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * What disappears from a copy while a run brings it from there to another has crossed or does not
 * cross. 1 TB takes 278 h over a link of 1 MB/s; the other holds what had crossed by then. Red if
 * the run carries on what its source no longer holds.
 */
class DeletedUnderWayTest {

  private static final double ALL = 1e12;
  private static final double PER_HOUR = 1e6 * Units.SECONDS_PER_HOUR;
  private static final double HORIZON = 300;
  private static final int HISTORIES = 100;
  private static final Rate RATE = new Rate(1.0 / 200);
  private static final Fixed NEVER_NOTICED = new Fixed(1e5);

  private static final Desk DELETION =
      Desk.of(new Desk.Deletion(RATE, new Desk.Bytes(ALL), NEVER_NOTICED));

  private static final Desk MALWARE = Desk.of(new Desk.Malware(RATE, NEVER_NOTICED));

  private static CopyBuilder copy(String id) {
    DriveModel model = DriveModel.builder("drive", 8 * ALL).fails(new Exponential(1e30)).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
        .keepsDeleted(1e4)
        .offline();
  }

  private static Copy emptyAndFedFrom(String source) {
    Feed feed = Feed.from(source).every(20_000).link(1e6).build();
    return copy("last").startsEmpty().fed(feed).build();
  }

  /**
   * The last copy holds at the end what crossed until a time that follows from that of the first
   * mishap.
   */
  private static void holds(Layout layout, Desk desk, DoubleUnaryOperator until) {
    crossedFor(
        struck -> until.applyAsDouble(struck.isEmpty() ? HORIZON : struck.get(0)), layout, desk);
  }

  /** The last copy holds at the end what crosses in some hours, which follow from the mishaps. */
  private static void crossedFor(ToDoubleFunction<List<Double>> hours, Layout layout, Desk desk) {
    Footage footage =
        Footage.builder(new Shoots(20_000, 1, Shoots.Spacing.EVEN)).onHand(ALL).build();
    Studio studio =
        Studio.builder("s", HORIZON / Units.HOURS_PER_YEAR)
            .footage(footage)
            .desk(desk)
            .layout(layout)
            .build();
    History history = new History(studio, layout, 1);
    int last = layout.copies().size() - 1;
    int[] partly = new int[1];
    for (int k = 0; k < HISTORIES; k++) {
      List<Double> struck = new ArrayList<>();
      history.tell(
          k,
          (told, now) -> {
            if (told.kind() == Kind.MALWARE || told.kind() == Kind.DELETED) {
              struck.add(told.hours());
            }
            if (told.kind() == Kind.END) {
              double crossed = Math.min(ALL, PER_HOUR * hours.applyAsDouble(struck));
              partly[0] += crossed < ALL ? 1 : 0;
              assertThat(now.heldBytes()[last])
                  .as("struck %s", struck)
                  .isCloseTo(crossed, within(1.));
            }
          });
    }
    assertThat(partly[0]).isBetween(HISTORIES / 4, HISTORIES - 1);
  }

  @Test
  void fromTheWorkingCopy() {
    Layout layout = Layout.of("l", copy("main").build(), emptyAndFedFrom("main"));
    holds(layout, DELETION, struck -> struck);
    holds(layout, MALWARE, struck -> struck);
  }

  /** The second copy drops it with its next run, due at 10, 60, 110 h ..., which takes no time. */
  @Test
  void fromACopyThatItReachesByARun() {
    Feed feed = Feed.from("main").every(50, 10).build();
    Copy second = copy("second").fed(feed).build();
    Layout layout = Layout.of("l", copy("main").build(), second, emptyAndFedFrom("second"));
    DoubleUnaryOperator nextRun = struck -> 10 + 50 * Math.ceil((struck - 10) / 50);
    holds(layout, DELETION, nextRun);
    holds(layout, MALWARE, nextRun);
  }

  /**
   * Malware takes all from the last copy, which is online, and nothing from the second, which has
   * no run before the end: each time the last is filled anew from there, in 93 h at 3 MB/s. Red if
   * a strike does not begin that again when the last had been filled after the strike before.
   */
  @Test
  void strikesWhatItsSourceStillHolds() {
    Copy second = copy("second").fed(Feed.from("main").every(20_000, 10_000).build()).build();
    Feed fast = Feed.from("second").continuous().link(3e6).build();
    Copy last = copy("last").reach(Copy.Reach.ONLINE).fed(fast).build();
    crossedFor(
        struck -> 3 * (struck.isEmpty() ? HORIZON : HORIZON - struck.get(struck.size() - 1)),
        Layout.of("l", copy("main").build(), second, last),
        MALWARE);
  }
}
