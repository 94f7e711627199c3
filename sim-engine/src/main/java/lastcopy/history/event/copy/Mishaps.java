package lastcopy.history.event.copy;

import lastcopy.history.event.Common;
import lastcopy.history.event.Shocks;
import lastcopy.history.event.drive.Drives;
import lastcopy.history.event.feed.Rotations;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.hazard.UnlikelyDraws;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** Mishaps of places and boxes: which of the copies there, and of the camera cards, they take. */
public final class Mishaps implements Shocks.Strike {

  private final Common common;
  private final HistoryState state;
  private final Clocks clocks;
  private final UnlikelyDraws unlikely;
  private final Drives drives;
  private final Rotations rotations;
  private final Outages outages;
  private final Cards cards;

  /** Mishaps that strike a state's copies. */
  public Mishaps(
      Common common,
      Clocks clocks,
      UnlikelyDraws unlikely,
      Drives drives,
      Rotations rotations,
      Outages outages,
      Cards cards) {
    this.common = common;
    state = common.state();
    this.clocks = clocks;
    this.unlikely = unlikely;
    this.drives = drives;
    this.rotations = rotations;
    this.outages = outages;
    this.cards = cards;
  }

  @Override
  public void strikes(ShockProcess shock, int k) {
    common.narrator().say(Happening.Kind.MISHAP, 0, Double.NaN, shock.words());
    int spared = risk(shock);
    for (int i = 0; i < shock.copies().length; i++) {
      CopyState copy = state.copy(shock.copies()[i]);
      if (!copy.isGone() && standsThere(shock, copy) && takes(shock, i, k)) {
        spared--;
        if (spared == 0 && shock.takes() < 1) {
          unlikely.cameOutBadly(shock.index());
        }
        common.rule().struck(shock.causes());
        drives.destroyAll(copy);
        if (strikesBox(shock, copy)) {
          common.spending().isBoxDestroyed(copy);
        }
        outages.goes(copy);
      }
    }
    if (shock.strikesCards() && takes(shock, shock.copies().length, k)) {
      common.tracker().leave();
      common.rule().struck(shock.causes());
      cards.destroyed();
    }
  }

  /** It comes out badly if each copy there is taken; how many there are. */
  private int risk(ShockProcess shock) {
    int there = 0;
    for (int c : shock.copies()) {
      CopyState copy = state.copy(c);
      there += !copy.isGone() && standsThere(shock, copy) ? 1 : 0;
    }
    if (there > 0 && shock.takes() < 1) {
      unlikely.risk(shock.index(), StrictMath.pow(shock.takes(), there));
    }
    return there;
  }

  private boolean standsThere(ShockProcess shock, CopyState copy) {
    return shock.kind() == ShockProcess.Kind.BOX
        || !copy.plan().rotates()
        || rotations.placeOf(copy).equals(shock.placeId());
  }

  /** A drive that visits its source has left its box at home. */
  private boolean strikesBox(ShockProcess shock, CopyState copy) {
    return shock.kind() == ShockProcess.Kind.BOX
        || copy.plan().stated().place().id().equals(shock.placeId());
  }

  private boolean takes(ShockProcess shock, int i, int k) {
    return shock.takes() >= 1
        || clocks.chance(
            state.plan().groups().takesOf(shock),
            shock.takes(),
            Draws.key(shock.takesKeys()[i], Draws.TAKES, k));
  }
}
