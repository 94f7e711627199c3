package lastcopy.cli.report;

import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Spans;
import lastcopy.cli.sentence.CostWords;
import lastcopy.cli.sentence.LossSizes;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/**
 * What the page says of one layout.
 *
 * @param title its name
 * @param safest whether it is shown to lose footage least often
 * @param icons its studios
 * @param number of studios that lose footage, such as "516 of 10,000"
 * @param range its interval in the same studios, empty if there is none
 * @param average lost on average
 * @param shoots the same in shoots
 * @param sizes how much those lose that lose anything; empty if too few were seen
 * @param worth of what is lost on average; empty where a shoot has no price
 * @param cost what it costs by the horizon; empty where nothing has a price
 * @param doubts why its figures are not to be trusted
 * @param causes why footage is lost, the commonest first
 * @param recoveries how long work stops
 */
record LayoutCard(
    String title,
    boolean safest,
    IconArray icons,
    String number,
    String range,
    String average,
    String shoots,
    List<String> sizes,
    List<String> worth,
    List<String> cost,
    List<String> doubts,
    List<Bar> causes,
    List<Stop> recoveries) {

  private static final int CAUSES = 4;
  private static final int RECOVERIES = 3;

  LayoutCard {
    sizes = List.copyOf(sizes);
    worth = List.copyOf(worth);
    cost = List.copyOf(cost);
    doubts = List.copyOf(doubts);
    causes = List.copyOf(causes);
    recoveries = List.copyOf(recoveries);
  }

  /**
   * A cause as a bar.
   *
   * @param words the cause
   * @param percent of the losses, rounded
   */
  record Bar(String words, long percent) {}

  /**
   * An interruption of work.
   *
   * @param cause what interrupted it
   * @param work when it goes on
   * @param whole when all is back
   */
  record Stop(String cause, String work, String whole) {}

  /**
   * The card of a layout.
   *
   * @param index of the layout, for ids in the page
   * @param outOf the page's denominator
   */
  static LayoutCard of(
      Comparison result, LayoutResult layout, int index, boolean safest, OutOf outOf) {
    return new LayoutCard(
        layout.title(),
        safest,
        IconArray.of("icons" + index, layout.anyLoss().value(), (int) outOf.studios()),
        Numbers.studiosAlone(layout.anyLoss(), outOf) + " of " + outOf.number(),
        range(layout.anyLoss(), outOf),
        Numbers.bytes(layout.bytesLost()),
        shoots(layout.shootsLost()),
        LossSizes.of(layout).stream().toList(),
        layout.moneyLost().map(money -> Numbers.money(money, result.currency())).stream().toList(),
        layout.cost().map(cost -> CostWords.detail(cost, result.currency())).stream().toList(),
        layout.doubts(),
        layout.causes().stream().limit(CAUSES).map(LayoutCard::bar).toList(),
        layout.recoveries().stream().limit(RECOVERIES).map(LayoutCard::stop).toList());
  }

  private static String shoots(Estimate lost) {
    return lost.seen() && lost.value() == 0 ? "no shoot" : "in shoots " + Numbers.figure(lost);
  }

  private static String range(Estimate chance, OutOf outOf) {
    return chance.onlyAtMost() || Numbers.belowOne(chance, outOf)
        ? ""
        : Numbers.range(chance, outOf.count(1)).orElse("");
  }

  private static Bar bar(CauseShare cause) {
    return new Bar(cause.sentence(), Math.round(100 * cause.share().value()));
  }

  private static Stop stop(Recovery recovery) {
    return new Stop(
        recovery.sentence(),
        Spans.after(recovery.workHours().value()),
        recovery.wholeHours().map(h -> Spans.after(h.value())).orElse("nothing to copy"));
  }

  /** What a reader of a screen is told of the drawing. */
  String pictured() {
    return String.format(
        Locale.ROOT, "%s studios drawn as squares, %s filled", number, icons.lost());
  }
}
