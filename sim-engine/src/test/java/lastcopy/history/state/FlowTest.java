package lastcopy.history.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import org.junit.jupiter.api.Test;

/** What has arrived by a time, however often somebody looked before: the same to the last bit. */
class FlowTest {

  private static final int FLOWS = 200;

  /** Red if what has arrived is reckoned from the last look, by whose roundings it then goes. */
  @Test
  void aLookChangesNothing() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < FLOWS; i++) {
      PositionSet positions = positions(random);
      double start = 100 * random.nextDouble();
      double perHour = 1e9 * (1 + random.nextDouble());
      double until = start + 60 * random.nextDouble();
      List<Double> looks = new ArrayList<>();
      for (int k = 0; k < 50; k++) {
        looks.add(start + (until - start) * random.nextDouble());
      }
      looks.sort(null);
      looks.add(until);
      PositionSet looked = new PositionSet();
      PositionSet alone = new PositionSet();
      Flow often = flow(positions, start, perHour);
      looks.forEach(at -> often.bringTo(at, looked));
      Flow once = flow(positions, start, perHour);
      once.bringTo(until, alone);
      assertThat(ends(looked)).isEqualTo(ends(alone));
      assertThat(ends(often.positions())).isEqualTo(ends(once.positions()));
      assertThat(often.endsAt(until)).isEqualTo(once.endsAt(until));
    }
  }

  /** Three hours at 2, less the rest of the first ten, leave four of which one has come by 3.5. */
  @Test
  void whatDoesNotComeIsNoLongerWaitedFor() {
    PositionSet all = new PositionSet();
    all.add(0, 14);
    Flow flow = flow(all, 0, 2);
    PositionSet held = new PositionSet();
    flow.bringTo(3, held);
    flow.content().remove(0, 10);
    flow.isLess();
    flow.bringTo(3.5, held);
    assertThat(ends(held)).containsExactly(0.0, 6.0, 10.0, 11.0);
    assertThat(ends(flow.positions())).containsExactly(11.0, 14.0);
    assertThat(flow.endsAt(3.5)).isEqualTo(5);
  }

  private static PositionSet positions(SplittableRandom random) {
    PositionSet positions = new PositionSet();
    double from = 0;
    for (int i = 0; i < 4; i++) {
      from += 1e9 * random.nextDouble();
      double to = from + 3e10 * random.nextDouble();
      positions.add(from, to);
      from = to;
    }
    return positions;
  }

  private static Flow flow(PositionSet positions, double start, double perHour) {
    Flow flow = new Flow();
    flow.content().copyFrom(positions);
    flow.begin(1, perHour, start);
    return flow;
  }

  private static List<Double> ends(Positions set) {
    List<Double> ends = new ArrayList<>();
    for (int i = 0; i < set.size(); i++) {
      ends.add(set.from(i));
      ends.add(set.to(i));
    }
    return ends;
  }
}
