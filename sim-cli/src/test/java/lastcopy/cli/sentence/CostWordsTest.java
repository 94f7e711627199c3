package lastcopy.cli.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lastcopy.experiment.Cost;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;

/** What layouts cost, word by word. */
class CostWordsTest {

  private static final Optional<String> EUR = Optional.of("EUR");

  private static Cost cost(Estimate total, double p5, double p50, double p95, double drives) {
    List<Cost.Part> parts =
        List.of(
            new Cost.Part("drives", drives),
            new Cost.Part("boxes", 0),
            new Cost.Part("power", total.value() - drives));
    return new Cost(total, p5, p50, p95, parts, List.of(total.value()), 20_000);
  }

  private static Estimate about(double value, double half) {
    return new Estimate(value, value - half, value + half, true);
  }

  @Test
  void whatIsPaidForAndByHowMany() {
    assertThat(CostWords.detail(cost(about(1_610.4, 1.2), 1_400, 1_580, 1_940, 1_600), EUR))
        .isEqualTo(
            "EUR 1,610 (1,609 to 1,612): drives 1,600, power 10.40; half pay at most"
                + " 1,580, nineteen in twenty at most 1,940");
  }

  @Test
  void whereAllPayTheSameNothingIsSaidOfSome() {
    assertThat(CostWords.detail(cost(Estimate.exact(180), 180, 180, 180, 180), Optional.empty()))
        .isEqualTo("180: drives 180");
    assertThat(CostWords.detail(cost(Estimate.exact(0), 0, 0, 0, 0), EUR)).isEqualTo("EUR 0");
  }

  @Test
  void differences() {
    assertThat(CostWords.difference(about(90, 2), "\"B\"", EUR))
        .isEqualTo("\"B\" costs EUR 90 (88 to 92) more.");
    assertThat(CostWords.difference(about(-90, 2), "\"B\"", EUR))
        .isEqualTo("\"B\" costs EUR 90 (88 to 92) less.");
    assertThat(CostWords.difference(about(1, 2), "\"B\"", EUR))
        .isEqualTo("No difference in cost could be shown.");
    assertThat(CostWords.difference(new Estimate(1, 0, 2, true), "\"B\"", EUR))
        .isEqualTo("No difference in cost could be shown.");
    assertThat(CostWords.difference(new Estimate(-1, -2, 0, true), "\"B\"", EUR))
        .isEqualTo("No difference in cost could be shown.");
    assertThat(CostWords.difference(Estimate.exact(0), "\"B\"", EUR))
        .isEqualTo("They cost the same.");
  }
}
