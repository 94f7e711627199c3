package lastcopy.history;

import java.util.Arrays;

/** Strikes of Poisson processes: which copies they hit, and when the next comes. */
final class Mishaps implements Mechanism {

  private final Stage stage;
  private final Plan plan;
  private final int[] count;

  Mishaps(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    count = new int[plan.strikers.length];
  }

  void clear() {
    Arrays.fill(count, 0);
  }

  void start() {
    for (int i = 0; i < plan.strikers.length; i++) {
      stage.clocks.startStriker(i, plan.firstStrikeKey[i]);
    }
  }

  @Override
  public void due(int index) {
    Striker striker = plan.strikers[index];
    stage.clocks.fired(plan.slots + index);
    int k = count[index]++;
    switch (striker.kind()) {
      case PLACE, BOX -> strike(index, k);
      case DELETION -> stage.desk.deletion(index, k);
      case MALWARE -> stage.desk.malware(index, k);
      case SPOIL -> stage.spoils.spoil(striker, striker.copies()[0]);
      case STOP -> stage.feeds.stops(striker.copies()[0]);
    }
    stage.clocks.startStriker(index, Draws.key(striker.source(), Draws.STRIKE, k + 1));
  }

  private void strike(int index, int k) {
    Striker striker = plan.strikers[index];
    stage.say(Happening.Kind.MISHAP, -1, -1, 0, Double.NaN, striker.words());
    int spared = risk(index, striker);
    for (int i = 0; i < striker.copies().length; i++) {
      int copy = striker.copies()[i];
      if (!stage.gone[copy] && standsThere(striker, copy) && takes(index, i, k)) {
        spared--;
        if (spared == 0 && striker.takes() < 1) {
          stage.cameOutBadly(index);
        }
        stage.rule.struck(striker.causes());
        stage.outages.destroyDrives(copy);
        stage.outages.goes(copy);
      }
    }
    if (striker.strikesCards() && takes(index, striker.copies().length, k)) {
      stage.calm.leave();
      stage.rule.struck(striker.causes());
      stage.cards.destroyed();
    }
  }

  /** It comes out badly if each copy there is taken; how many there are. */
  private int risk(int index, Striker striker) {
    int there = 0;
    for (int copy : striker.copies()) {
      there += !stage.gone[copy] && standsThere(striker, copy) ? 1 : 0;
    }
    if (there > 0 && striker.takes() < 1) {
      stage.risk(index, StrictMath.pow(striker.takes(), there));
    }
    return there;
  }

  private boolean standsThere(Striker striker, int copy) {
    return striker.kind() == Striker.Kind.BOX
        || plan.visits[copy] == null
        || stage.feeds.placeOf(copy).equals(striker.placeId());
  }

  private boolean takes(int index, int i, int k) {
    Striker striker = plan.strikers[index];
    return striker.takes() >= 1
        || stage.clocks.chance(
            plan.takesOf[index],
            striker.takes(),
            Draws.key(striker.takesKeys()[i], Draws.TAKES, k));
  }
}
