package lastcopy.history.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;

/** Who is told of a history: nobody, whoever counts, or whoever listens. */
class AudienceTest {

  private static final Happening START =
      new Happening(Happening.Kind.START, 0, -1, -1, 0, Double.NaN, "");

  private final Audience audience = new Audience();
  private final List<Happening> seen = new ArrayList<>();

  private static LossTally tally(long number) {
    double[] rows = {1};
    LossTally tally = new LossTally(new Thresholds(rows, rows, rows, 1));
    tally.begin(number);
    return tally;
  }

  private void nobodyIsTold() {
    assertThat(audience.ledger()).isSameAs(Silent.LEDGER);
    assertThat(audience.wantsTime()).isFalse();
  }

  @Test
  void atFirstNobody() {
    nobodyIsTold();
    assertThat(audience.hasListener()).isFalse();
    assertThat(Silent.LEDGER.wantsTime()).isFalse();
  }

  /** The first 20,000 histories are timed. */
  @Test
  void whoeverCountsIsToldOfTimeIfItWants() {
    LossTally timed = tally(0);
    audience.counts(timed);
    assertThat(audience.ledger()).isSameAs(timed);
    assertThat(audience.wantsTime()).isTrue();
    assertThat(audience.hasListener()).isFalse();
    audience.counts(tally(20_000));
    assertThat(audience.wantsTime()).isFalse();
  }

  @Test
  void whoeverListensIsToldAndNobodyCounts() {
    audience.counts(tally(0));
    audience.listens((happening, snapshot) -> seen.add(happening));
    nobodyIsTold();
    assertThat(audience.hasListener()).isTrue();
    audience.saw(START, null);
    assertThat(seen).containsExactly(START);
    audience.counts(tally(0));
    assertThat(audience.hasListener()).as("the next history").isFalse();
  }
}
