package lastcopy.decide.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The front of cost against chance by the estimates, from the cheapest to the safest; what is alike
 * is on it once. Each member loses less often than the one before it, by more than a step.
 *
 * @param members by cost
 * @param open those of which it is not sure that a member covers them
 */
public record Front(List<Bounds> members, List<Rivalry> open) {

  /** The order in which candidates are preferred where nothing else is asked. */
  static final Comparator<Bounds> CHEAPEST_FIRST =
      Comparator.<Bounds>comparingDouble(each -> each.cost().value())
          .thenComparingDouble(each -> each.chance().value())
          .thenComparingInt(Bounds::candidate);

  /** Copies the lists. */
  public Front {
    members = List.copyOf(members);
    open = List.copyOf(open);
  }

  /** The front of candidates. */
  public static Front of(List<Bounds> all, Zone zone, Pairs pairs) {
    List<Bounds> sorted = all.stream().sorted(CHEAPEST_FIRST).toList();
    List<Bounds> members = members(sorted, zone);
    List<Rivalry> open = new ArrayList<>();
    for (Bounds each : sorted) {
      if (members.stream().noneMatch(m -> m.equals(each) || m.covers(each, zone, pairs))) {
        Bounds by = coverer(members, each, zone);
        open.add(
            Rivalry.of(each, by, !by.losesNoMore(each, zone, pairs), !by.costsNoMore(each, zone)));
      }
    }
    return new Front(members, open);
  }

  private static List<Bounds> members(List<Bounds> sorted, Zone zone) {
    List<Bounds> members = new ArrayList<>();
    double stands = 0; // the least cost that the last member stands for
    for (Bounds each : sorted) {
      Bounds last = members.isEmpty() ? null : members.get(members.size() - 1);
      if (last == null || each.chance().value() < last.chance().value() / zone.stepOfChance()) {
        boolean replaces = last != null && each.cost().value() <= stands * zone.stepOfCost();
        if (replaces) {
          members.remove(members.size() - 1);
        } else {
          stands = each.cost().value();
        }
        members.add(each);
      }
    }
    return members;
  }

  /** The safest member that costs no more by the estimates. */
  private static Bounds coverer(List<Bounds> members, Bounds candidate, Zone zone) {
    Bounds by = members.get(0);
    for (Bounds member : members) {
      if (member.cost().value() <= candidate.cost().value() * zone.stepOfCost()) {
        by = member;
      }
    }
    return by;
  }
}
