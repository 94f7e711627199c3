package lastcopy.history;

import java.util.function.Function;
import java.util.function.UnaryOperator;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.RandomShoots;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Studio;

/**
 * Histories of random studios, played event by event, at each step of which somebody looks: for
 * checks that need no second simulator. With -Dconservation.studios=15 they are of so many studios.
 */
final class WatchedHistories {

  static final int STUDIOS = Integer.getInteger("conservation.studios", 150);
  static final int HISTORIES = 20;

  private WatchedHistories() {}

  /** Looks at how things stand whenever time passes. */
  abstract static class Watch implements Ledger {
    final HistoryState state;

    /** Which history it is. */
    String what = "";

    /** How often it looked, or how long. */
    double looked;

    Watch(HistoryState state) {
      this.state = state;
    }

    @Override
    public void lost(Loss loss) {}

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {}

    @Override
    public boolean wantsTime() {
      return true;
    }
  }

  /** Plays histories of studios of a kind, each changed; how often, or long, all looked. */
  static double of(
      String kind, long seed, UnaryOperator<Studio> changed, Function<HistoryState, Watch> who) {
    RandomStudios studios = new RandomStudios(seed, kind.equals("unlikely"));
    double looked = 0;
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = changed.apply(studios.next(kind));
      Plan plan = Plan.of(studio, studio.layouts().get(0));
      Draws draws = new Draws(5);
      RandomShoots random = new RandomShoots(plan, draws);
      EventLoop loop = new EventLoop(plan, draws);
      Watch watch = who.apply(loop.state());
      for (int k = 0; k < HISTORIES; k++) {
        draws.start(k);
        watch.what = kind + " studio " + i + " history " + k;
        ShootTable shoots = plan.evenShoots() ? plan.shoots() : random.until(plan.horizon());
        loop.audience().counts(watch);
        loop.run(shoots, null);
      }
      looked += watch.looked;
    }
    return looked;
  }
}
