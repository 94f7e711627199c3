package lastcopy.history.hazard;

import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Audience;

/**
 * Draws that may lose footage, though they are seldom made or seldom come out badly: the ledger of
 * a biased history is told of each, by channel, so that what luck has not shown can be reckoned.
 */
public final class UnlikelyDraws {

  private final Plan plan;
  private final Clocks clocks;
  private final Audience audience;

  /** Those of a layout's histories. */
  public UnlikelyDraws(Plan plan, Clocks clocks, Audience audience) {
    this.plan = plan;
    this.clocks = clocks;
    this.audience = audience;
  }

  /** How many channels: kinds of such draws. */
  public static int channels(Plan plan) {
    return plan.shocks() + plan.copies();
  }

  /** What such a draw does when it comes out badly, in words. */
  public static String words(Plan plan, int channel) {
    if (channel >= plan.shocks()) {
      return "a hidden defect is met on '" + plan.copy(channel - plan.shocks()).name() + "'";
    }
    ShockProcess shock = plan.shock(channel);
    String badly = shock.isAtDesk() ? " and it is noticed too late" : " and every copy is taken";
    return shock.words() + badly;
  }

  /** The channel of latent defects of a copy. */
  int defectsOf(int copy) {
    return plan.shocks() + copy;
  }

  /** An unlikely draw is about to be made; the chance that it comes out badly. */
  public void risk(int channel, double chance) {
    if (clocks.likelihood().biasing()) {
      clocks.settleAll();
      audience.ledger().risked(channel, chance);
    }
  }

  /** An unlikely draw has come out badly. */
  public void cameOutBadly(int channel) {
    if (clocks.likelihood().biasing()) {
      audience.ledger().cameOutBadly(channel);
    }
  }
}
