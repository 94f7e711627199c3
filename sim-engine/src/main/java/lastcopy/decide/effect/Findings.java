package lastcopy.decide.effect;

import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;

/** What merged chunks say of alternatives, by their index; the layout as it is has 0. */
interface Findings {

  /** What an alternative loses and costs. */
  LayoutResult result(int alternative);

  /** Its chance of any loss less that of the layout as it is. */
  Estimate any(int alternative, double errorRate);

  /** Its expected bytes lost less those of the layout as it is. */
  Estimate bytes(int alternative, double errorRate);

  /** Its expected shoots lost less those of the layout as it is. */
  Estimate shoots(int alternative, double errorRate);

  /** What it costs less what the layout as it is costs; empty where nothing is priced. */
  Optional<Estimate> cost(int alternative);

  /** The chance of any loss of one alternative less that of another. */
  Estimate between(int one, int other, double errorRate);
}
