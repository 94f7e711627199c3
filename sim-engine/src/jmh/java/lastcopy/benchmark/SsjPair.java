package lastcopy.benchmark;

import umontreal.ssj.randvar.RandomVariateGen;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;

/** The pair of drives with a general-purpose simulation library: one event class a happening. */
final class SsjPair {

  private final Simulator sim = new Simulator();
  private final RandomVariateGen life;
  private final RandomVariateGen repair;
  private final double repairLocation;
  private final double horizon;
  private int down;
  private boolean lost;

  SsjPair(RandomVariateGen life, RandomVariateGen repair, double repairLocation, double horizon) {
    this.life = life;
    this.repair = repair;
    this.repairLocation = repairLocation;
    this.horizon = horizon;
  }

  /** Whether one history ends in a loss by the horizon. */
  boolean loses() {
    down = 0;
    lost = false;
    sim.init();
    new End().schedule(horizon);
    new Failure().schedule(life.nextDouble());
    new Failure().schedule(life.nextDouble());
    sim.start();
    return lost;
  }

  private final class Failure extends Event {
    Failure() {
      super(SsjPair.this.sim);
    }

    @Override
    public void actions() {
      down++;
      if (down == 2) {
        lost = true;
        sim.stop();
      } else {
        new Repaired().schedule(repairLocation + repair.nextDouble());
      }
    }
  }

  private final class Repaired extends Event {
    Repaired() {
      super(SsjPair.this.sim);
    }

    @Override
    public void actions() {
      down--;
      new Failure().schedule(life.nextDouble());
    }
  }

  private final class End extends Event {
    End() {
      super(SsjPair.this.sim);
    }

    @Override
    public void actions() {
      sim.stop();
    }
  }
}
