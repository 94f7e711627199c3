package lastcopy.oracle;

import static lastcopy.oracle.SmallStudios.eternal;
import static lastcopy.oracle.SmallStudios.even;
import static lastcopy.oracle.SmallStudios.footage;
import static lastcopy.oracle.SmallStudios.studio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who has a share of an uplink, beside a continuous feed that carries on what comes bit by bit:
 * both simulators against hand arithmetic, in histories in which each drive dies at a known hour.
 */
class SharedUplinkTest {

  private static final double NEVER = 1e9;
  private static final double HORIZON = 99;

  /**
   * The shoot of 12 GB at 50 h is bare until the other copy has it. That gets 2 GB from 73 h to 74
   * h, half as fast while the third copy carries on what comes to the far one, and 2 GB an hour
   * again when either has died, at 74.4 h: 0.4 GB by then, and the last at 79.2 h. Red if a feed
   * keeps its share when it, or what it follows, has gone, or gets it a quarter of an hour late.
   */
  @ParameterizedTest
  @CsvSource({"74.4, 1e9", "1e9, 74.4"})
  void whoHasGoneHasNoShare(double farDies, double thirdDies) {
    Studio studio =
        studioOf(
            even(),
            eternal("main"),
            dies("far", farDies).nightly("main", 2, 0.4),
            dies("third", thirdDies).continuous("far", 1).over("office", 2),
            eternal("other").nightly("main", 1, 1).over("office", 2));
    bareHoursAre(79.2 - 50, studio);
  }

  /**
   * What comes to the far copy from 74 h to 86 h, after it has died at 60 h, the third copy has
   * since ever: it carries on none of it. So the other has all of the uplink, and its 12 GB from 75
   * h to 81 h; main's are bare from the third's death at 80 h until then. Red if a feed has a share
   * that has nothing to carry.
   */
  @Test
  void whoHasAllThatComesHasNoShare() {
    Studio studio =
        studioOf(
            footage(12, NEVER, 1, Shoots.Spacing.EVEN),
            eternal("main"),
            dies("far", 60).arrives(new Fixed(1)).nightly("main", 2, 1),
            dies("third", 80).continuous("far", 1).over("office", 2),
            eternal("other").every("main", NEVER, 75, 1).over("office", 2).startsEmpty());
    bareHoursAre(81 - 80, studio);
  }

  /**
   * The third copy has been unusable since long before, and nobody knows: its run of 12 GB goes on
   * beside the far copy's, from 74 h to 86 h. Red if nothing is sent to an unusable copy.
   */
  @Test
  void whoIsUnusableHasItsShare() {
    Studio studio =
        studioOf(
            even(),
            eternal("main"),
            eternal("far").nightly("main", 2, 1).over("office", 2),
            eternal("third").nightly("main", 2, 1).over("office", 2).spoils(1, NEVER));
    bareHoursAre(86 - 50, studio);
  }

  /**
   * A continuous feed that carries on what comes, over the uplink on which it comes, has half of it
   * all the while, though it begins anew every quarter of an hour: what it follows is as slow as on
   * half of the uplink. Red if it has a share only while a run of its own goes on.
   */
  @Test
  void whoCarriesOnOverTheSameUplinkHasHalfOfIt() {
    Part far = eternal("far").nightly("main", 2, 1);
    Part third = eternal("third").continuous("far", 1).over("office", 2);
    Studio shared =
        studio(
            599,
            even(),
            Desk.QUIET,
            OptionalDouble.empty(),
            eternal("main"),
            far.over("office", 2),
            third);
    Studio alone =
        studio(
            599,
            even(),
            Desk.QUIET,
            OptionalDouble.empty(),
            eternal("main"),
            eternal("far").nightly("main", 2, 1));
    assertThat(ComparedMeans.ofEngine(shared, 4_000, 1).get("bare days").value())
        .isCloseTo(ComparedMeans.ofEngine(alone, 4_000, 1).get("bare days").value(), within(1e-9));
  }

  private static Part dies(String id, double hours) {
    return eternal(id).lives(new Fixed(hours)).arrives(new Fixed(NEVER));
  }

  private static Studio studioOf(Footage footage, Part... parts) {
    return studio(HORIZON, footage, Desk.QUIET, OptionalDouble.empty(), parts);
  }

  private static void bareHoursAre(double hours, Studio studio) {
    double days = hours / HORIZON * 365;
    assertThat(ComparedMeans.ofOracle(studio, 1, 1).get("bare days").value())
        .isCloseTo(days, within(1e-6));
    assertThat(ComparedMeans.ofEngine(studio, 1, 1).get("bare days").value())
        .isCloseTo(days, within(1e-6));
  }
}
