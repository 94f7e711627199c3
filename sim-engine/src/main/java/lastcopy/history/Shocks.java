package lastcopy.history;

import java.util.Arrays;

/** Strikes of Poisson processes: which copies they hit, and when the next comes. */
final class Shocks implements Mechanism {

  private final HistoryState state;
  private final Plan plan;
  private final int[] count;

  Shocks(HistoryState state) {
    this.state = state;
    plan = state.plan;
    count = new int[plan.shocks.length];
  }

  void clear() {
    Arrays.fill(count, 0);
  }

  void start() {
    for (int i = 0; i < plan.shocks.length; i++) {
      state.clocks.startShock(i, plan.firstStrikeKey[i]);
    }
  }

  @Override
  public void due(int index) {
    ShockProcess shock = plan.shocks[index];
    state.clocks.fired(plan.slots + index);
    int k = count[index]++;
    switch (shock.kind()) {
      case PLACE, BOX -> strike(index, k);
      case DELETION -> state.desk.deletion(index, k);
      case MALWARE -> state.desk.malware(index, k);
      case SPOIL -> state.spoils.spoil(shock, shock.copies()[0]);
      case STOP -> state.feeds.stops(shock.copies()[0]);
    }
    state.clocks.startShock(index, Draws.key(shock.source(), Draws.STRIKE, k + 1));
  }

  private void strike(int index, int k) {
    ShockProcess shock = plan.shocks[index];
    state.say(Happening.Kind.MISHAP, -1, -1, 0, Double.NaN, shock.words());
    int spared = risk(index, shock);
    for (int i = 0; i < shock.copies().length; i++) {
      int copy = shock.copies()[i];
      if (!state.gone[copy] && standsThere(shock, copy) && takes(index, i, k)) {
        spared--;
        if (spared == 0 && shock.takes() < 1) {
          state.cameOutBadly(index);
        }
        state.rule.struck(shock.causes());
        state.outages.destroyDrives(copy);
        state.outages.goes(copy);
      }
    }
    if (shock.strikesCards() && takes(index, shock.copies().length, k)) {
      state.tracker.leave();
      state.rule.struck(shock.causes());
      state.cards.destroyed();
    }
  }

  /** It comes out badly if each copy there is taken; how many there are. */
  private int risk(int index, ShockProcess shock) {
    int there = 0;
    for (int copy : shock.copies()) {
      there += !state.gone[copy] && standsThere(shock, copy) ? 1 : 0;
    }
    if (there > 0 && shock.takes() < 1) {
      state.risk(index, StrictMath.pow(shock.takes(), there));
    }
    return there;
  }

  private boolean standsThere(ShockProcess shock, int copy) {
    return shock.kind() == ShockProcess.Kind.BOX
        || plan.visits[copy] == null
        || state.feeds.placeOf(copy).equals(shock.placeId());
  }

  private boolean takes(int index, int i, int k) {
    ShockProcess shock = plan.shocks[index];
    return shock.takes() >= 1
        || state.clocks.chance(
            plan.takesOf[index], shock.takes(), Draws.key(shock.takesKeys()[i], Draws.TAKES, k));
  }
}
