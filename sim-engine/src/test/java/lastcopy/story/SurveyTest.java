package lastcopy.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which history is chosen, from lives made up by hand. */
class SurveyTest {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static Life lost(long number, double bytes) {
    return new Life(number, 3, bytes, Optional.empty());
  }

  private static Life survived(long number, long happenings) {
    return new Life(number, happenings, 0, Optional.empty());
  }

  private static Life near(long number, int failures, double escapedBy, double bytes) {
    return new Life(number, 2, 0, Optional.of(new NearMiss(0, 0, bytes, 10, escapedBy, failures)));
  }

  private static long typical(Life... lives) {
    return new Survey(100, List.of(lives), true).typical().orElseThrow().number();
  }

  private static long nearMiss(Life... lives) {
    return new Survey(100, List.of(lives), true).nearMiss().orElseThrow().number();
  }

  @Test
  void typicalIsTheMedianOfTheCommonerOutcome() {
    assertThat(typical(lost(1, 30), lost(2, 10), survived(3, 1), lost(4, 20))).isEqualTo(4);
    assertThat(typical(survived(1, 9), survived(2, 2), lost(3, 1), survived(4, 4))).isEqualTo(4);
    // As many of each: not commoner. The lower median of two, and the first of equal ones.
    assertThat(typical(lost(1, 30), lost(2, 10), survived(5, 2), survived(6, 2))).isEqualTo(5);
    assertThat(typical(survived(1, 1), survived(2, 5))).isEqualTo(1);
    assertThat(new Survey(100, List.of(), true).typical()).isEmpty();
  }

  @Test
  void nearMissIsTheNearestThatLostNothing() {
    Life loser = new Life(0, 9, 5, Optional.empty());
    assertThat(nearMiss(loser, near(1, 2, 1, 99), near(2, 1, NEVER, 1))).isEqualTo(2);
    assertThat(nearMiss(near(1, 1, NEVER, 99), near(2, 1, 50, 1))).isEqualTo(2);
    assertThat(nearMiss(near(1, 1, NEVER, 1), near(2, 1, NEVER, 3))).isEqualTo(2);
    assertThat(nearMiss(survived(1, 2), survived(2, 5), survived(3, 5))).isEqualTo(2);
    assertThat(new Survey(100, List.of(loser), true).nearMiss()).isEmpty();
  }

  @Test
  void theFirstInWhichNothingHappened() {
    assertThat(new Survey(100, List.of(), true).firstUneventful()).hasValue(0);
    assertThat(new Survey(100, List.of(lost(1, 3)), true).firstUneventful()).hasValue(0);
    List<Life> lives = List.of(lost(0, 3), survived(1, 2), lost(3, 1));
    assertThat(new Survey(100, lives, true).firstUneventful()).hasValue(2);
    assertThat(new Survey(2, lives.subList(0, 2), true).firstUneventful()).isEmpty();
  }
}
