package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What unlikely draws may add, by hand: what was risked less what came, until ten have come. */
class ChannelTallyTest {

  private final Channels channels = new Channels(3);

  @Test
  void whatWasRiskedAndDidNotComeIsMissed() {
    channels.risked(0, .3);
    channels.risked(0, .2);
    channels.cameOutBadly(0, .1);
    channels.risked(2, .9);
    channels.endHistory();
    channels.risked(2, .1);
    channels.endHistory();
    channels.endHistory();
    channels.addHistories(10);
    assertThat(channels.count()).isEqualTo(3);
    assertThat(channels.missed(0)).isCloseTo((.5 - .1) / 10, within(1e-15));
    assertThat(channels.missed(1)).isZero();
    assertThat(channels.missed(2)).isCloseTo(1 / 10.0, within(1e-15));
    assertThat(channels.missed()).isCloseTo(.14, within(1e-15));
    assertThat(channels.missing()).as("the largest first").containsExactly(2, 0);
  }

  /** Of equal weights ten effective ones are ten; risked was twice what came. */
  @ParameterizedTest
  @CsvSource({"9, .01125", "10, 0", "11, 0"})
  void whatCameOftenEnoughIsKnown(int came, double missed) {
    for (int i = 0; i < came; i++) {
      channels.risked(1, .25);
      channels.cameOutBadly(1, .125);
      channels.endHistory();
    }
    channels.addHistories(100);
    assertThat(channels.missed()).isCloseTo(missed, within(1e-15));
  }

  @Test
  void whatCameMoreOftenThanItWasRiskedMissesNothing() {
    channels.risked(1, .1);
    channels.cameOutBadly(1, .4);
    channels.endHistory();
    channels.addHistories(10);
    assertThat(channels.missed()).isZero();
    assertThat(channels.missing()).isEmpty();
  }

  /** A certain life has no density, so that its draws have no weight. */
  @Test
  void whatHasNoWeightIsLeftOut() {
    channels.risked(0, Double.NaN);
    channels.risked(1, Double.POSITIVE_INFINITY);
    channels.risked(2, .5);
    channels.endHistory();
    channels.addHistories(10);
    assertThat(channels.missed()).isCloseTo(.05, within(1e-15));
  }

  @Test
  void chunksAddUp() {
    channels.risked(0, .3);
    channels.cameOutBadly(0, .1);
    channels.endHistory();
    channels.addHistories(4);
    Channels later = new Channels(3);
    later.risked(0, .2);
    later.risked(1, .2);
    later.cameOutBadly(0, .15);
    later.endHistory();
    later.addHistories(6);
    channels.merge(later);
    assertThat(channels.missed(0)).isCloseTo((.5 - .25) / 10, within(1e-15));
    assertThat(channels.missed(1)).isCloseTo(.02, within(1e-15));
  }
}
