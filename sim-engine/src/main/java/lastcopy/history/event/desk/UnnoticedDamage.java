package lastcopy.history.event.desk;

import java.util.ArrayList;
import java.util.List;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.history.state.Holdings;

/** Deletions and malware strikes that nobody has noticed yet. */
public final class UnnoticedDamage {

  private final HistoryState state;
  private final List<Damage> all = new ArrayList<>();
  private final PositionSet scratch = new PositionSet();

  /** None yet. */
  public UnnoticedDamage(HistoryState state) {
    this.state = state;
  }

  void clear() {
    all.clear();
  }

  List<Damage> all() {
    return all;
  }

  /** How many. */
  public int count() {
    return all.size();
  }

  void add(Damage one) {
    all.add(one);
  }

  void remove(Damage one) {
    all.remove(one);
  }

  /** What has aged out is kept no longer, but by a shelf. */
  public void agesOut(double aged) {
    for (Damage damage : all) {
      for (CopyState copy : state.copies()) {
        if (!copy.plan().set().shelf()) {
          damage.in(copy).kept.remove(0, aged);
        }
      }
    }
  }

  /** Whether all of some positions are deleted since before now. */
  public boolean covers(Positions positions) {
    scratch.copyFrom(positions);
    for (Damage damage : all) {
      if (damage.at < state.now()) {
        scratch.removeAll(damage.block);
      }
    }
    return scratch.isEmpty();
  }

  /** What copies keep and what is blocked, and when somebody notices or a copy drops something. */
  void settle() {
    Holdings holdings = state.holdings();
    double notice = Double.POSITIVE_INFINITY;
    double drop = Double.POSITIVE_INFINITY;
    holdings.blocked().clear();
    for (CopyState copy : state.copies()) {
      copy.keepsNothing();
    }
    for (Damage damage : all) {
      notice = Math.min(notice, damage.noticedAt);
      if (damage.in(state.working()).reached) {
        holdings.blocked().addAll(damage.block);
      }
      for (CopyState copy : state.copies()) {
        Damage.Spread spread = damage.in(copy);
        if (!spread.kept.isEmpty()) {
          if (!spread.unusable) {
            copy.keeps(spread.kept);
          }
          drop = Math.min(drop, spread.dropAt);
        }
      }
    }
    setAnew(state.timers().noticed(), notice);
    setAnew(state.timers().dropped(), drop);
  }

  private void setAnew(int timer, double at) {
    state.clock().cancel(timer);
    state.clock().set(timer, at);
  }
}
