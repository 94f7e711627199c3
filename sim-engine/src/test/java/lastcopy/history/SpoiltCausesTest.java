package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
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

/** What an unusable copy costs is told of that copy, whichever else became unusable since. */
class SpoiltCausesTest {

  private static final double SHOOTS_EVERY = 100;

  private boolean farSpoilt;
  private int offloadsLost;

  private static CopyBuilder copy(String id) {
    DriveModel model =
        DriveModel.builder("drive", 8 * Units.TB).fails(new Exponential(1e30)).build();
    return Copy.builder(id)
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
        .spoils(new Copy.Spoils(new Rate(1 / 1_000.0), OptionalDouble.empty()));
  }

  /** Red if a shoot that goes to an unusable working copy is told to be lost by the far one. */
  @Test
  void ofTheWorkingCopy() {
    Layout layout =
        Layout.of(
            "l",
            copy("main").build(),
            copy("far").fed(Feed.from("main").every(24).build()).build());
    Footage footage =
        Footage.builder(new Shoots(SHOOTS_EVERY, Units.GB, Shoots.Spacing.EVEN)).build();
    Studio studio = Studio.builder("s", 1).footage(footage).layout(layout).build();
    History history = new History(studio, layout, 5);
    for (int k = 0; k < 50; k++) {
      farSpoilt = false;
      history.tell(k, (happening, snapshot) -> look(happening));
    }
    assertThat(offloadsLost).as("shoots lost after the far copy spoilt").isPositive();
  }

  private void look(Happening happening) {
    farSpoilt |= happening.kind() == Happening.Kind.SPOILT && happening.copy() == 1;
    boolean atShoot = happening.hours() % SHOOTS_EVERY == 0;
    if (happening.kind() == Happening.Kind.LOST && atShoot) {
      assertThat(happening.subject()).contains("'main'");
      offloadsLost += farSpoilt ? 1 : 0;
    }
  }
}
