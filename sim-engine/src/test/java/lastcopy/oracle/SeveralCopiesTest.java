package lastcopy.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.law.Fixed;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Three and four copies, in stars and chains, with feeds that lag, stop, or come every twenty days,
 * with and without cards: how long, and how much, stands in one copy only, against the second
 * simulator.
 *
 * <p>Two-sample tests as in {@link OracleComparisonTest}, alarm rate 1e-6 each. Where a continuous
 * feed follows one that is still going, both simulators step, by different fractions of an hour.
 * Seen red: a refill that waits for a quarter of an hour although the next source has all of it.
 */
class SeveralCopiesTest {

  private static final double ALARM_DEVIATIONS = 4.89;
  private static final int ENGINE_TIMES = 4;
  private static final double LEAST_COUNT = 60;
  private static final String[] NAMES = {"main", "second", "third", "fourth"};

  static IntStream few() {
    return IntStream.range(0, 6);
  }

  static IntStream many() {
    return IntStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("few")
  void agree(int number) {
    agree(number, 300);
  }

  @ParameterizedTest
  @MethodSource("many")
  @Tag("slow")
  void agreeClosely(int number) {
    agree(number, 3_000);
  }

  /**
   * Nothing is drawn: a drive that fails at 907 hours is refilled by the faster of two copies and
   * then by the other, without a pause between them; what stands in one copy only is then the same
   * to the last digit.
   */
  @Test
  void theNextSourceOfARefillFollowsAtOnce() {
    Footage footage = SmallStudios.footage(20, 81, 10, Shoots.Spacing.EVEN);
    Studio studio =
        SmallStudios.studio(
            2_000,
            footage,
            Desk.QUIET,
            OptionalDouble.of(160),
            Part.single("main", 1).lives(new Fixed(907)).goneNoticed(in(20)).restores(5),
            SmallStudios.eternal("far").restores(3).nightly("main", 13, 0.257),
            SmallStudios.eternal("other").restores(6).every("main", 480, 358, 0.264));
    Map<String, ComparedMeans.Mean> engine = ComparedMeans.ofEngine(studio, 1, 1);
    ComparedMeans.ofOracle(studio, 1, 1)
        .forEach(
            (figure, mean) ->
                assertThat(engine.get(figure).value())
                    .as(figure)
                    .isCloseTo(mean.value(), withinPercentage(1e-7)));
  }

  private static Delay in(double hours) {
    return new Delay.Lawful(new Fixed(hours));
  }

  private static void agree(int number, int histories) {
    Studio studio = studio(RandomSource.XO_SHI_RO_256_PP.create(7_000L + number));
    Map<String, ComparedMeans.Mean> engine =
        ComparedMeans.ofEngine(studio, (long) ENGINE_TIMES * histories, 1 + number);
    ComparedMeans.ofOracle(studio, histories, 1_000_000L * (1 + number))
        .forEach(
            (figure, mean) -> {
              ComparedMeans.Mean other = engine.get(figure);
              if (mean.count() >= LEAST_COUNT) {
                double error = Math.hypot(mean.error(), other.error());
                assertThat(Math.abs(mean.value() - other.value()))
                    .as("studio %d, %s: %s here, %s in the engine", number, figure, mean, other)
                    .isLessThanOrEqualTo(ALARM_DEVIATIONS * error + 1e-9 * mean.value());
              }
            });
  }

  private static Studio studio(UniformRandomProvider random) {
    double every = 24 + random.nextInt(100);
    double gigabytes = 4 + random.nextInt(12);
    Footage footage =
        SmallStudios.footage(
            20 * random.nextInt(2),
            every,
            gigabytes,
            random.nextInt(3) == 0 ? Shoots.Spacing.RANDOM : Shoots.Spacing.EVEN);
    Part[] parts = new Part[3 + random.nextInt(2)];
    parts[0] =
        Part.single("main", 1_500 + random.nextInt(5_000))
            .goneNoticed(random.nextBoolean() ? in(random.nextInt(30)) : new Delay.Looks(24))
            .restores(2 + random.nextInt(10));
    for (int c = 1; c < parts.length; c++) {
      parts[c] = fed(random, c, gigabytes / every);
    }
    OptionalDouble cards =
        random.nextBoolean() ? OptionalDouble.of(24 + random.nextInt(200)) : OptionalDouble.empty();
    return SmallStudios.studio(2_000, footage, Desk.QUIET, cards, parts);
  }

  private static Part fed(UniformRandomProvider random, int copy, double flow) {
    String from = NAMES[random.nextInt(copy)];
    double rate = flow * (0.8 + 3 * random.nextDouble());
    Part part =
        Part.single(NAMES[copy], 1_500 + random.nextInt(6_000))
            .restores(1 + random.nextInt(8))
            .arrives(new Fixed(random.nextInt(60)));
    part =
        switch (random.nextInt(3)) {
          case 0 -> part.nightly(from, random.nextInt(24), rate);
          case 1 ->
              part.every(from, 480, random.nextInt(480), rate * (random.nextBoolean() ? 1 : 30));
          default -> part.continuous(from, rate);
        };
    part = random.nextBoolean() ? part.stops(400 + random.nextInt(800), 200) : part;
    return random.nextInt(4) == 0 ? part.startsEmpty() : part;
  }
}
