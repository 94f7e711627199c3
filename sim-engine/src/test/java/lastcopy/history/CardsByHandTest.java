package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Box;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * What is lost, and when, of 100 bytes on hand and ten more every 100 h whose cards are kept for 30
 * h, by hand.
 */
class CardsByHandTest {

  private static final double FOREVER = 1e9;

  private static CopyBuilder copy(String id, Arrangement arrangement, double lives) {
    return ByHand.copy(id, arrangement, 1e6, lives, FOREVER);
  }

  /** When something was lost, and how much; a history by its number. */
  private static List<String> lost(double horizon, int number, Copy... copies) {
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.of(30));
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(
                Footage.builder(new Shoots(100, 10, Shoots.Spacing.EVEN))
                    .onHand(100)
                    .clip(1)
                    .build())
            .layout(layout)
            .build();
    List<String> lost = new ArrayList<>();
    new History(studio, layout, 1)
        .tell(
            number,
            (told, now) -> {
              if (told.kind() == Kind.LOST) {
                lost.add(number == 0 ? told.hours() + " " + told.bytes() : "" + told.bytes());
              }
            });
    return lost;
  }

  /**
   * The far copy dies at 150 h, after the cards of 100 h were formatted; those of 200 h are at 230,
   * so that the working copy takes all with it at 240 h, but at 220 h all but those. Red if cards
   * are formatted no more once something has happened.
   */
  @Test
  void cardsAreFormattedWhileACopyIsGone() {
    Copy far =
        copy("far", Arrangement.SINGLE, 150).fed(Feed.from("main").every(24).build()).build();
    assertThat(lost(300, 0, copy("main", Arrangement.SINGLE, 240).build(), far))
        .containsExactly("240.0 120.0");
    assertThat(lost(300, 0, copy("main", Arrangement.SINGLE, 220).build(), far))
        .containsExactly("220.0 110.0", "230.0 10.0");
  }

  /**
   * The working copy is gone from 195 to 219 h, when the shoot of 200 h is offloaded, so that its
   * cards are kept until 249. It dies again at 235 h, before the run of 240. Red if the cards are
   * thought to be formatted 30 h after it was shot.
   */
  @Test
  void cardsOfAShootThatWaitedAreKeptForLonger() {
    DriveModel model =
        DriveModel.builder("m", 1e6)
            .fails(new Fixed(1_000))
            .age(new Fixed(805))
            .boughtAt(984)
            .build();
    Copy main =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .arrival(new Fixed(24))
            .build();
    Feed runs = Feed.from("main").every(100, 40).link(1e9).build();
    Copy far = copy("far", Arrangement.SINGLE, FOREVER).fed(runs).restoresAt(1e9).build();
    assertThat(lost(255, 0, main, far)).containsExactly("249.0 10.0");
  }

  /** A drive that has been replaced lives as long as the first: dead at 150, 200, 350 and 400 h. */
  @Test
  void aDriveOfAShelfThatWasReplacedDiesToo() {
    Copy shelf = copy("main", Arrangement.SHELF, 150).arrival(new Fixed(50)).build();
    assertThat(lost(410, 0, shelf)).containsExactly("150.0 110.0", "350.0 20.0");
  }

  /**
   * Something strikes about every thousand hours. A fire takes the cards with the drive: all that
   * was shot, at once. A box's drives die without them: if the last cards are there still, their
   * ten bytes are lost later, or not by the end.
   */
  @Test
  void aFireTakesTheCardsAndABoxDoesNot() {
    Place burns = Place.of("studio", new Mishap("fire", new Rate(1 / 1_000.0), 1));
    Copy burnt = copy("main", Arrangement.SINGLE, FOREVER).at(burns).build();
    Copy boxed =
        copy("main", Arrangement.SINGLE, FOREVER).in(Box.of("b", new Rate(1 / 1_000.0))).build();
    int later = 0;
    for (int k = 1; k <= 60; k++) {
      assertThat(lost(2_000, k, burnt).size()).isLessThanOrEqualTo(1);
      List<String> inBox = lost(2_000, k, boxed);
      later += inBox.size() > 1 ? 1 : 0;
      assertThat(inBox.stream().skip(1)).allMatch("10.0"::equals);
    }
    assertThat(later).as("of about 52 that strike 30 of 100 hours are after a shoot").isPositive();
  }
}
