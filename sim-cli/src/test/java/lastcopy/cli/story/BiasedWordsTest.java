package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.compare.SampleComparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;

/** What is said of a biased life, of results made by hand. */
class BiasedWordsTest {

  private static final String BIASED =
      "This is told from a biased history: the rates of failures and mishaps were raised on purpose"
          + " so that something happens.";

  private static LayoutResult of(Estimate chance) {
    return SampleComparison.layout("l", "L", chance, false);
  }

  /** 1 of 2,000, between 1 of 2,500 and 1 of 1,000. */
  @Test
  void howRareALossIs() {
    assertThat(BiasedWords.of(of(new Estimate(5e-4, 4e-4, 1e-3, true)), 5))
        .containsExactly(
            BIASED,
            "Without that, the chance of losing any footage over 5 years is 1 in 2,000 (1 in 2,500 to"
                + " 1 in 1,000, 95 % sure); so rare is a life that loses any.");
    assertThat(BiasedWords.of(of(new Estimate(0, 0, 1e-3, false)), 1))
        .containsExactly(
            BIASED,
            "Without that, the chance of losing any footage over 1 year is at most 1 in 1,000 (95 %"
                + " sure); so rare is a life that loses any.");
  }

  @Test
  void aChanceInDoubtIsSaidSo() {
    LayoutResult sure = of(new Estimate(5e-4, 4e-4, 1e-3, true));
    assertThat(BiasedWords.of(SampleComparison.doubted(sure, List.of("Few decide."), List.of()), 5))
        .endsWith("That chance is in doubt and its range widened for it.", "Few decide.");
    assertThat(BiasedWords.of(sure, 5)).doesNotContain("That chance is in doubt");
  }
}
