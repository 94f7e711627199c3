package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lastcopy.history.report.Audience;
import lastcopy.history.report.Loss;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.simulate.count.LossLedger;
import org.junit.jupiter.api.Test;

/** Channels of a plan of a fire and three copies, and what a ledger is told of them. */
class UnlikelyChannelsTest extends ClocksFixture {

  private final Audience audience = new Audience();
  private final List<String> told = new ArrayList<>();

  /** Writes down what it is told, and what hazard has passed by then. */
  private final class Told extends LossLedger {
    @Override
    public void lost(Loss loss) {
      throw new AssertionError("nothing is lost");
    }

    @Override
    public void risked(int channel, double badly) {
      double passed = clocks.likelihood().statistics().hazard(0, 0);
      assertThat(passed).isCloseTo(.1 * budget, within(1e-12));
      told.add(channel + " at " + badly);
    }

    @Override
    public void cameOutBadly(int channel) {
      told.add(channel + " came");
    }
  }

  @Test
  void eachChannelHasItsWords() {
    plan = HazardsTest.plan(new Exponential(9));
    assertThat(UnlikelyDraws.channels(plan)).isEqualTo(4);
    assertThat(UnlikelyDraws.words(plan, 0))
        .isEqualTo("fire struck at 'studio' and every copy is taken");
    assertThat(UnlikelyDraws.words(plan, 1)).isEqualTo("a hidden defect is met on 'main'");
    assertThat(UnlikelyDraws.words(plan, 3)).isEqualTo("a hidden defect is met on 'turns#2'");
  }

  /** The ledger weighs a risk by the likelihood ratio of that instant. */
  @Test
  void theLedgerOfABiasedHistoryIsTold() {
    Law life = new Exponential(100);
    start(life, bias(life, 4), null);
    audience.counts(new Told());
    UnlikelyDraws unlikely = new UnlikelyDraws(plan, clocks, audience);
    live(0, 0);
    time.passTo(10 * budget);
    assertThat(unlikely.defectsOf(2)).as("after the fire and two copies").isEqualTo(3);
    unlikely.risk(3, .25);
    unlikely.cameOutBadly(3);
    assertThat(told).containsExactly("3 at 0.25", "3 came");
    clocks.endBias();
    unlikely.risk(3, .25);
    unlikely.cameOutBadly(3);
    assertThat(told).as("nothing after the first loss").hasSize(2);
  }

  @Test
  void theLedgerOfAPlainHistoryIsNotTold() {
    start(new Exponential(100), Bias.NONE, null);
    audience.counts(new Told());
    UnlikelyDraws unlikely = new UnlikelyDraws(plan, clocks, audience);
    unlikely.risk(0, .25);
    unlikely.cameOutBadly(0);
    assertThat(told).isEmpty();
  }
}
