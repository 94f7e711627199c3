package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * What a builder of {@code lastcopy.scenario} is not told is what a file is taken for that does not
 * say it, so that a program and a file that say the same simulate the same.
 */
class BuildersTest {

  private static final String FILE =
      """
      lastcopy: 1
      studio: Small
      years: 5
      footage:
        shoots: {every: 7 days, size: 96 GB}
      drives:
        desk: {size: 8 TB, fails: {mean: 50000 h}}
      layouts:
        two:
          copies:
            main: {drives: 2 x desk, arrangement: mirror}
            far:
              drives: 1 x desk
              feed: {from: main, every: 1 day}
            paid:
              service: {loses: 0 per year}
              feed: {from: main, continuous: true}
      """;

  private static Copy copy(String id, Medium on, Feed... feeds) {
    var copy = Copy.builder(id).on(on).leftOut(EnumSet.allOf(Copy.LeftOut.class));
    for (Feed feed : feeds) {
      copy.fed(feed);
    }
    return copy.build();
  }

  @Test
  void whatIsNotToldIsTheFormatsDefault() {
    DriveModel desk =
        DriveModel.builder("desk", 8 * Units.TB).fails(new Exponential(50_000)).build();
    Medium mirror = Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(desk).build();
    Medium drive = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(desk).build();
    Medium service = Medium.Service.losing(lastcopy.scenario.Rate.NONE);
    Layout two =
        Layout.builder("two")
            .copy(copy("main", mirror))
            .copy(copy("far", drive, Feed.from("main").every(24).build()))
            .copy(copy("paid", service, Feed.from("main").continuous().build()))
            .build();
    Shoots shoots = new Shoots(7 * Units.HOURS_PER_DAY, 96 * Units.GB, Shoots.Spacing.EVEN);
    Studio built =
        Studio.builder("Small", 5).footage(Footage.builder(shoots).build()).layout(two).build();
    assertThat(built).isEqualTo(Texts.studio(FILE));
  }
}
