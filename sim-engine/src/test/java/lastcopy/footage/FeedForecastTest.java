package lastcopy.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** What feeds will carry against hand arithmetic and a brute-force walk through time. */
class FeedForecastTest {

  private static Copy copy(String id, Optional<Feed> feed, boolean full) {
    CopyBuilder copy = Copy.builder(id).on(Medium.Service.losing(Rate.NONE)).startsFull(full);
    feed.ifPresent(copy::fed);
    return copy.build();
  }

  private static Optional<Feed> feed(String from, Feed.Schedule schedule, double bytesPerHour) {
    double rate = bytesPerHour / Units.SECONDS_PER_HOUR;
    return Optional.of(Feed.from(from).schedule(schedule).link(rate).build());
  }

  private static FeedForecast forecast(double hours, double onHand, Shoots shoots, List<Copy> fed) {
    Footage footage = Footage.builder(shoots).onHand(onHand).build();
    List<Copy> copies = new ArrayList<>(List.of(copy("main", Optional.empty(), true)));
    copies.addAll(fed);
    Layout layout = Layout.of("l", copies.toArray(Copy[]::new));
    Studio studio =
        Studio.builder("s", hours / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    return FeedForecast.of(studio, layout, ShootTable.even(footage, studio.horizonHours()));
  }

  private static Shoots every(double hours, double bytes) {
    return new Shoots(hours, bytes, Shoots.Spacing.EVEN);
  }

  /** 8 TB at 18.4 Mbit/s: 8e12 · 8 / 18.4e6 s = 3,478,261 s = 40.26 days (link arithmetic). */
  @Test
  void firstFillOfEightTerabytesTakesFortyDays() {
    double rate = 18.4e6 / 8 * 3600;
    Copy far = copy("far", feed("main", new Feed.Continuous(), rate), false);
    FeedForecast forecast = forecast(8760, 8e12, every(1e5, 1), List.of(far));
    assertThat(forecast.line(1, 0).run(0).end() / 24).isBetween(40.0, 42.0);
  }

  /** 20 Mbit/s carries 9 GB an hour (Mbit/s · 0.45 = GB/h). */
  @Test
  void twentyMegabitsCarryNineGigabytesAnHour() {
    Copy far = copy("far", feed("main", new Feed.Continuous(), 20e6 / 8 * 3600), false);
    FeedForecast forecast = forecast(100, 90e9, every(1e5, 1), List.of(far));
    assertThat(forecast.line(1, 0).carried(1)).isCloseTo(9e9, within(1.0));
    assertThat(forecast.line(1, 0).carried(10)).isCloseTo(90e9, within(1.0));
  }

  /** A brute-force walk in steps of 1/64 h, for random integer feeds in a chain (seed fixed). */
  @Test
  void agreesWithAWalkThroughTime() {
    Random random = new Random(20260101);
    for (int i = 0; i < 200; i++) {
      compare(random);
    }
  }

  private static void compare(Random random) {
    double onHand = random.nextInt(40);
    Shoots shoots = every(4 + random.nextInt(20), 1 + random.nextInt(40));
    double[] rate = {1 << random.nextInt(4), 1 << random.nextInt(4)};
    int[] every = {1 + random.nextInt(12), 1 + random.nextInt(12)};
    int[] at = {random.nextInt(6), random.nextInt(6)};
    List<Copy> fed = new ArrayList<>();
    for (int c = 0; c < 2; c++) {
      Feed.Every schedule = new Feed.Every(every[c], at[c]);
      fed.add(copy("c" + c, feed(c == 0 ? "main" : "c0", schedule, rate[c]), false));
    }
    FeedForecast forecast = forecast(120, onHand, shoots, fed);
    double total = onHand;
    double[] held = new double[2];
    double[] goal = new double[2];
    boolean[] due = new boolean[2];
    for (int step = 0; step <= 120 * 64; step++) {
      double t = step / 64.0;
      for (int c = 0; c < 2; c++) {
        due[c] |= t >= at[c] && (t - at[c]) % every[c] == 0;
        if (due[c] && held[c] >= goal[c]) {
          goal[c] = c == 0 ? total : held[0];
          due[c] = false;
        }
      }
      if (t > 0 && t % shoots.everyHours() == 0) {
        total += shoots.sizeBytes();
      }
      for (int c = 0; c < 2; c++) {
        assertThat(forecast.line(c + 1, 0).carried(t))
            .as("copy %d at %s", c, t)
            .isCloseTo(held[c], within(1e-6));
        held[c] = Math.min(goal[c], held[c] + rate[c] / 64);
      }
    }
  }
}
