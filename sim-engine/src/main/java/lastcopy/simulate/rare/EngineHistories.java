package lastcopy.simulate.rare;

import java.util.function.BooleanSupplier;
import lastcopy.history.History;
import lastcopy.history.hazard.Bias;
import lastcopy.history.hazard.PathStatistics;
import lastcopy.history.report.Ledger;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** The engine's histories of a layout, biased. */
public final class EngineHistories implements Biasable {

  private final History history;
  private PathStatistics effort;

  public EngineHistories(Studio studio, Layout layout, long seed) {
    history = new History(studio, layout, seed);
  }

  @Override
  public int groups() {
    return history.groups();
  }

  @Override
  public void giveUpWhen(BooleanSupplier asked) {
    history.giveUpWhen(asked);
  }

  @Override
  public int levels() {
    return history.levels();
  }

  @Override
  public int depth(int level) {
    return history.depth(level);
  }

  @Override
  public double mostFactor(int group) {
    return history.mostFactor(group);
  }

  @Override
  public int channels() {
    return history.channels();
  }

  @Override
  public String channel(int index) {
    return history.channel(index);
  }

  @Override
  public void simulate(long number, Bias bias, Ledger to) {
    history.bias(bias);
    effort = history.statistics(); // asked also while the history goes on
    history.simulate(number, to);
  }

  @Override
  public double events(int group, int level) {
    return effort.events(group, level);
  }

  @Override
  public double hazard(int group, int level) {
    return effort.hazard(group, level);
  }

  @Override
  public double logOfTheRest() {
    return effort.places();
  }
}
