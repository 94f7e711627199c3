package lastcopy.simulate.count;

import java.util.List;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;

/** What a layout loses, each figure with its interval, however its histories were simulated. */
public interface Figures {

  /** Chance of any loss by the horizon. */
  Estimate anyLoss();

  /** Chance that everything is lost at some instant. */
  Estimate everythingLost();

  /** Expected number of loss events. */
  Estimate lossEvents();

  /** Expected bytes lost. */
  Estimate bytesLost();

  /** Expected shoots lost, parts as parts. */
  Estimate shootsLost();

  /** Expected shoots of which any byte is lost. */
  Estimate shootsHit();

  /** Chance of a loss by the years of a row of {@link Thresholds#years()}. */
  Estimate firstLossBy(int row);

  /** Chance to lose at least so many bytes: the rows of {@link Thresholds#bytes()} and more. */
  List<LayoutResult.Point> bytesReached();

  /** The same in shoots. */
  List<LayoutResult.Point> shootsReached();

  /** Shares of the causes, the largest first. */
  List<LayoutResult.CauseShare> causes();
}
