package lastcopy.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Spans;
import lastcopy.cli.sentence.Horizon;
import lastcopy.experiment.Comparison;
import lastcopy.interval.Estimate;
import lastcopy.outlook.Room;
import lastcopy.scenario.Studio;
import lastcopy.words.ByteUnit;

/** What is at stake: how much there is, how many shoots that is, and what they are worth. */
final class Stakes {

  private Stakes() {}

  /**
   * A sentence each.
   *
   * @param room what there is, by year
   */
  static List<String> of(Studio studio, List<Room.Year> room, Comparison result) {
    double then = room.get(room.size() - 1).footageBytes();
    double size = studio.footage().shoots().sizeBytes();
    double shoots = Math.rint(then / size);
    List<String> stakes = new ArrayList<>();
    stakes.add(
        ByteUnit.format(room.get(0).footageBytes())
            + " of footage today, "
            + ByteUnit.format(then)
            + " after "
            + Horizon.of(result));
    stakes.add(
        String.format(
            Locale.ROOT,
            "a shoot of %s every %s on average, as large as %s shoots in all",
            ByteUnit.format(size),
            Spans.period(studio.footage().shoots().everyHours()),
            ByteUnit.digits(shoots)));
    studio
        .footage()
        .worthPerShoot()
        .ifPresent(
            worth ->
                stakes.add(
                    money(worth, result)
                        + " for each shoot that is lost, as the file says: "
                        + money(worth * shoots, result)
                        + " for all of them"));
    return stakes;
  }

  private static String money(double amount, Comparison result) {
    return Numbers.money(Estimate.exact(amount), result.currency());
  }
}
