package lastcopy.simulate;

import java.util.stream.Stream;
import lastcopy.exact.MarkovChain;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

class RareChainsTest {
  static final double YEAR = 8_760;

  record Case(String name, Studio studio, double exact) {}

  static Case set(
      String name,
      Arrangement arrangement,
      int drives,
      int survives,
      double perYear,
      double repair) {
    double[] up = new double[survives + 1];
    double[] down = new double[survives];
    for (int i = 0; i <= survives; i++) {
      up[i] = (drives - i) * perYear / YEAR;
      if (i > 0) down[i - 1] = i / repair;
    }
    return new Case(
        name,
        Studios.archive(
            5 * YEAR, CopyMaker.markov("main", arrangement, drives, YEAR / perYear, repair)),
        MarkovChain.row(up, down).chance(0, survives + 1, 5 * YEAR));
  }

  static Case three(String name, double perYear, double back, double fire, double loses) {
    Place place = Studios.place("studio", fire / YEAR, 1);
    CopyMaker main =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Exponential(YEAR / perYear))
            .arrival(new Exponential(back))
            .at(place);
    CopyMaker far =
        CopyMaker.set("far", Arrangement.MIRROR, 2)
            .life(new Exponential(YEAR / perYear))
            .arrival(new Exponential(back))
            .at(place)
            .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
    CopyMaker service =
        CopyMaker.service("service", Rate.perYear(1 - Math.exp(-loses)))
            .arrival(new Exponential(back))
            .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
    return new Case(
        name,
        Studios.archive(5 * YEAR, main, far, service),
        new Chain(perYear / YEAR, 1 / back, fire / YEAR, loses / YEAR).lossBy(5 * YEAR));
  }

  static Stream<Case> cases() {
    return Stream.of(
        set("mirror", Arrangement.MIRROR, 2, 1, 0.1, 72),
        set("mirror", Arrangement.MIRROR, 2, 1, 0.03, 72),
        set("mirror", Arrangement.MIRROR, 2, 1, 0.00003, 72),
        set("triple", Arrangement.MIRROR, 3, 2, 0.02, 72),
        set("triple", Arrangement.MIRROR, 3, 2, 0.002, 24),
        set("double8", Arrangement.DOUBLE_PARITY, 8, 2, 0.02, 72),
        set("double8", Arrangement.DOUBLE_PARITY, 8, 2, 0.0005, 24),
        three("three", 0.05, 240, 0.01, 0.02),
        three("three", 0.02, 72, 1e-3, 1e-3),
        three("three", 0.02, 24, 1e-5, 1e-3),
        three("three", 0.01, 72, 0, 1e-4));
  }

  @Test
  void explore() {
    cases()
        .forEach(
            c -> {
              var layout = c.studio.layouts().get(0);
              int n = 40, N = 4000, cov = 0, trusted = 0, covT = 0, none = 0;
              double sum = 0, var = 0, msT = 0, msC = 0, ess = 0, ev = 0;
              Thresholds th = Thresholds.of(c.studio);
              for (int seed = 1; seed <= n; seed++) {
                long t0 = System.nanoTime();
                var t = Tuning.of(new EngineHistories(c.studio, layout, seed));
                long t1 = System.nanoTime();
                if (t.isEmpty()) {
                  none++;
                  continue;
                }
                RareTally tally =
                    RareTally.of(
                        new EngineHistories(c.studio, layout, -seed), t.get().mixture(), th, 0, N);
                long t2 = System.nanoTime();
                msT += (t1 - t0) / 1e6;
                msC += (t2 - t1) / 1e6;
                Estimate e = tally.any.estimate(0.95, 1);
                boolean ok = e.low() <= c.exact && c.exact <= e.high();
                cov += ok ? 1 : 0;
                if (tally.any.trusted()) {
                  trusted++;
                  covT += ok ? 1 : 0;
                }
                sum += e.value() / c.exact;
                var += tally.any.relativeVariance();
                ess += tally.any.effective() / N;
                ev += t.get().eventsEach();
              }
              System.out.printf(
                  "%s exact %.3g: none %d cov %.3f trusted %.2f covT %.3f mean %.4f relvar %.1f ess/N %.3f events %.2f tune %.1f ms count %.2f us each -> ms to 5%% %.1f%n",
                  c.name,
                  c.exact,
                  none,
                  cov / (double) n,
                  trusted / (double) n,
                  covT / (double) Math.max(1, trusted),
                  sum / n,
                  var / n,
                  ess / n,
                  ev / n,
                  msT / n,
                  msC / n / N * 1000,
                  var / n * 1537 * msC / n / N);
            });
  }
}
