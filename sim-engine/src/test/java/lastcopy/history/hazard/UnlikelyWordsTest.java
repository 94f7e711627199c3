package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import org.junit.jupiter.api.Test;

/** Channels of a plan of a fire and three copies. */
class UnlikelyWordsTest {

  @Test
  void eachChannelHasItsWords() {
    Plan plan = HazardsTest.plan(new Exponential(9));
    assertThat(UnlikelyDraws.channels(plan)).isEqualTo(4);
    assertThat(UnlikelyDraws.words(plan, 0))
        .isEqualTo("fire struck at 'studio' and every copy is taken");
    assertThat(UnlikelyDraws.words(plan, 1)).isEqualTo("a hidden defect is met on 'main'");
    assertThat(UnlikelyDraws.words(plan, 3)).isEqualTo("a hidden defect is met on 'turns#2'");
  }
}
