package lastcopy.decide.rule;

import lastcopy.interval.Estimate;

/**
 * What is known of a candidate. The ends of all intervals of all candidates hold at once unless the
 * procedure errs; picks go by the values.
 *
 * @param candidate its number
 * @param chance of any loss
 * @param cost over the horizon; exactly 0 of all where nothing is priced
 */
public record Bounds(int candidate, Estimate chance, Estimate cost) {

  /** Whether it surely costs no more than another, but for the zone. */
  boolean costsNoMore(Bounds other, Zone zone) {
    return cost.high() <= zone.cost() * other.cost.low();
  }

  /** Whether it surely loses no more often than another, but for the zone. */
  boolean losesNoMore(Bounds other, Zone zone, Pairs pairs) {
    double low = other.chance.low();
    return chance.high() <= zone.chance() * low
        || pairs.losesAtMost(candidate, (zone.chance() - 1) * low, other.candidate);
  }

  /** Whether it is surely no worse than another in either way, but for the zone. */
  boolean covers(Bounds other, Zone zone, Pairs pairs) {
    return costsNoMore(other, zone) && losesNoMore(other, zone, pairs);
  }
}
