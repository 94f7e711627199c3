package lastcopy.history.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import lastcopy.history.report.Cause.Context;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Causes of a fire as their files and sentences name them, and the ages that tell them apart. */
class CauseTest {

  @Test
  void eachContextHasItsOwnCause() {
    Map<Context, Cause> all = Cause.family("place:fire", "fire struck");
    assertThat(all).hasSize(Context.values().length);
    assertThat(all.values()).extracting(Cause::sentence).doesNotHaveDuplicates();
    assertThat(all.get(Context.ALONE)).isEqualTo(new Cause("place:fire", "fire struck"));
    assertThat(all.get(Context.UNSEEN))
        .isEqualTo(
            new Cause(
                "place:fire+unseen",
                "fire struck while another drive of the set had failed and nobody had seen it"));
    assertThat(all.get(Context.CARDS))
        .isEqualTo(
            new Cause(
                "place:fire+cards",
                "fire struck, and the camera cards were formatted before another copy had it"));
  }

  /** Less than a day, a week of 168 h, and a month of 730 h. */
  @ParameterizedTest
  @CsvSource({
    "0, BEHIND_HOURS",
    "23.9, BEHIND_HOURS",
    "24, BEHIND_DAYS",
    "167.9, BEHIND_DAYS",
    "168, BEHIND_WEEKS",
    "729.9, BEHIND_WEEKS",
    "730, BEHIND_LONGER",
    "9000, BEHIND_LONGER"
  })
  void howFarBehindIsToldByAge(double hours, Context context) {
    assertThat(Context.behind(hours)).isEqualTo(context);
  }
}
