package lastcopy.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.number.Elementary;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * Records of any sort, few and many, tied, late, found at checks: what is fitted is a maximum, and
 * curves fall.
 *
 * <p>Seen red: a slope a tenth too small; a plain of the likelihood taken for its peak.
 */
class RandomRecordsTest {

  private static final double[] AWAY = {-0.3, -0.01, 0.01, 0.3};

  @Test
  void lawsAreMaximaWithinTheirIntervalsAndCurvesFall() {
    UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(14L);
    int weibulls = 0;
    for (int i = 0; i < 400; i++) {
      Records records = sample(random);
      Fitted fitted = Fitted.of(records, 1, 0.95);
      fitted.weibull().ifPresent(fit -> holds(fit.shape(), fit.scale()));
      fitted.lognormal().ifPresent(fit -> holds(fit.median(), fit.sigma()));
      weibulls += fitted.weibull().isPresent() ? 1 : 0;
      fitted
          .weibull()
          .ifPresent(
              fit ->
                  isPeak(
                      new LawLikelihood(Shape.WEIBULL, records),
                      Math.log(fit.scale().value()),
                      -Math.log(fit.shape().value())));
      fitted
          .lognormal()
          .ifPresent(
              fit ->
                  isPeak(
                      new LawLikelihood(Shape.LOGNORMAL, records),
                      Math.log(fit.median().value()),
                      Math.log(fit.sigma().value())));
      falls(fitted.steps());
      nested(fitted);
    }
    assertThat(weibulls).isGreaterThan(250);
  }

  private static void holds(Estimate... estimates) {
    for (Estimate estimate : estimates) {
      assertThat(estimate.low()).isLessThanOrEqualTo(estimate.value());
      assertThat(estimate.high()).isGreaterThanOrEqualTo(estimate.value());
      assertThat(estimate.value()).isPositive().isFinite();
    }
  }

  private static void isPeak(LawLikelihood likelihood, double location, double logScale) {
    double most = likelihood.value(location, logScale);
    for (double x : AWAY) {
      for (double y : AWAY) {
        double value = likelihood.value(location + x * Elementary.exp(logScale), logScale + y);
        assertThat(Double.isNaN(value) || value <= most + 1e-9 * Math.abs(most))
            .as(location + " " + logScale + " " + x + " " + y + ": " + value + " > " + most)
            .isTrue();
      }
    }
  }

  private static void falls(List<Step> steps) {
    double before = 1;
    for (Step step : steps) {
      assertThat(step.survival()).isBetween(0.0, before);
      assertThat(step.from()).isLessThanOrEqualTo(step.age());
      before = step.survival();
    }
  }

  /** The constant hazard is Weibull's law of shape 1, and one piece. */
  private static void nested(Fitted fitted) {
    Optional<ExponentialFit> exponential = fitted.exponential();
    if (exponential.isPresent() && fitted.weibull().isPresent()) {
      double less = exponential.get().logLikelihood();
      assertThat(fitted.weibull().get().logLikelihood()).isGreaterThan(less - 1e-7);
    }
  }

  private static Records sample(UniformRandomProvider random) {
    int drives = 1 + random.nextInt(random.nextBoolean() ? 5 : 60);
    double shape = 0.5 + 3 * random.nextDouble();
    double grain = random.nextBoolean() ? 0.25 : 1e-6;
    List<LifeRecord> records = new ArrayList<>();
    while (records.size() < drives) {
      double entry = random.nextInt(3) == 0 ? rounded(4 * random.nextDouble(), grain) : 0;
      double end = entry + grain + rounded(6 * random.nextDouble(), grain);
      double life =
          grain + rounded(5 * Math.pow(-Math.log1p(-random.nextDouble()), 1 / shape), grain);
      if (life > entry) {
        records.add(record(random, entry, life, end));
      }
    }
    return new Records(records);
  }

  private static LifeRecord record(
      UniformRandomProvider random, double entry, double life, double end) {
    if (life > end) {
      return LifeRecord.running(entry, end);
    }
    return random.nextInt(4) == 0
        ? LifeRecord.failedBetween(entry, Math.max(entry, life - 1), life)
        : LifeRecord.failedAt(entry, life);
  }

  private static double rounded(double value, double grain) {
    return grain * Math.floor(value / grain);
  }
}
