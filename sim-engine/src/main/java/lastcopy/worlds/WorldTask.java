package lastcopy.worlds;

import java.util.function.BooleanSupplier;
import lastcopy.history.History;
import lastcopy.scenario.Layout;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Mixture;
import lastcopy.simulate.rare.RareTally;

/**
 * Simulates several layouts in one world: all that they share, and the numbers of their histories.
 */
final class WorldTask {

  /** Seeds of biased histories, apart from those of plain ones and of each other's layouts. */
  private static final long COUNTED = 0x3C6EF372FE94F82BL; // fractional digits of √5

  private static final int HELD_AGAINST = 4_096;

  /**
   * What a layout is to do in a world.
   *
   * @param layout its index
   * @param mixture the bias, or null
   * @param first the number of the first history
   * @param histories how many
   */
  record Order(int layout, Mixture mixture, long first, int histories) {}

  private final PossibleStudios studios;
  private final Thresholds thresholds;
  private final long seed;
  private final boolean timed;

  WorldTask(PossibleStudios studios, Thresholds thresholds, long seed, boolean timed) {
    this.studios = studios;
    this.thresholds = thresholds;
    this.seed = seed;
    this.timed = timed;
  }

  /** By order, a {@link LossTally} of plain histories or a {@link RareTally} of biased ones. */
  Object[] simulate(double[] point, Order[] orders, BooleanSupplier givesUp) {
    Studio studio = studios.at().apply(point);
    Object[] tallies = new Object[orders.length];
    for (int i = 0; i < orders.length; i++) {
      tallies[i] = simulate(studio, orders[i], givesUp);
    }
    return tallies;
  }

  private Object simulate(Studio studio, Order order, BooleanSupplier givesUp) {
    Layout layout = studio.layouts().get(order.layout);
    if (order.mixture == null) {
      return plain(new History(studio, layout, seed), order, givesUp);
    }
    long own = (seed * 31 + layout.id().hashCode()) ^ COUNTED;
    EngineHistories histories = new EngineHistories(studio, layout, own);
    histories.giveUpWhen(givesUp);
    return RareTally.of(histories, order.mixture, thresholds, order.first, order.histories);
  }

  /** Some plain histories in one world, to hold biased ones against. */
  static LossTally plain(Studio studio, int layout, long seed, Thresholds thresholds) {
    Order order = new Order(layout, null, 0, HELD_AGAINST);
    LossTally all = new LossTally(thresholds);
    all.merge(
        new WorldTask(PossibleStudios.only(studio), thresholds, seed, false)
            .plain(new History(studio, studio.layouts().get(layout), seed), order, () -> false));
    return all;
  }

  private LossTally plain(History history, Order order, BooleanSupplier givesUp) {
    history.giveUpWhen(givesUp);
    LossTally tally = new LossTally(thresholds);
    for (int i = 0; i < order.histories; i++) {
      tally.begin(timed);
      history.simulate(order.first + i, tally);
      tally.end();
    }
    return tally;
  }
}
