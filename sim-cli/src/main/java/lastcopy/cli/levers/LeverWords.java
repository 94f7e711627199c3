package lastcopy.cli.levers;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Figures and sentences of levers, all chances of one denominator. */
record LeverWords(LeverFindings findings, OutOf outOf) {

  private static final int INDENT = 2;
  private static final int FEWER = 20;
  private static final int BYTES = 24;
  private static final int COST = 26;
  private static final int RISK = 8;
  private static final double PER = 100;

  /** What helps most, what it costs, and what is most for the money. */
  String answer() {
    List<MeasuredEffect> less = findings.deeds(Direction.LESS);
    if (less.isEmpty()) {
      return "No single change was found that takes anything off the risk that could be measured.";
    }
    MeasuredEffect first = less.get(0);
    String most =
        String.format(
            Locale.ROOT,
            "What helps most: %s. Of %s like yours, %s fewer lose footage within %s then. %s",
            lower(first),
            outOf.words(),
            ranged(first.difference().negated(), outOf.count(1)),
            horizon(),
            cost(first));
    return most + forTheMoney(less, first).map(words -> " " + words).orElse("");
  }

  private Optional<String> forTheMoney(List<MeasuredEffect> less, MeasuredEffect first) {
    Optional<MeasuredEffect> free =
        less.stream().filter(each -> !isDearerOrUnpriced(each)).findFirst();
    if (findings.effects().base().cost().isEmpty()) {
      return Optional.empty();
    }
    if (free.isPresent()) {
      return free.filter(each -> !each.equals(first))
          .map(
              each ->
                  String.format(
                      Locale.ROOT,
                      "Of what costs nothing more, %s helps most: %s fewer.",
                      lower(each),
                      ranged(each.difference().negated(), outOf.count(1))));
    }
    return less.stream()
        .max(Comparator.comparingDouble(each -> findings.perMoney(each, PER).orElse(0.0)))
        .filter(each -> !each.equals(first))
        .map(
            each ->
                "Most for the money is "
                    + lower(each)
                    + ": "
                    + ranged(each.difference().negated(), outOf.count(1))
                    + " fewer. "
                    + cost(each));
  }

  private boolean isDearerOrUnpriced(MeasuredEffect effect) {
    return !findings.deed(effect).isPriced()
        || effect.costDifference().map(cost -> cost.high() > 0).orElse(true);
  }

  private String lower(MeasuredEffect effect) {
    String title = findings.deed(effect).title();
    return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  private String horizon() {
    double years = findings.study().studio().years();
    return Numbers.fixed(years, years == Math.rint(years) ? 0 : 1)
        + (years == 1 ? " year" : " years");
  }

  private String cost(MeasuredEffect effect) {
    Optional<Estimate> cost = effect.costDifference();
    if (cost.isEmpty()) {
      return "";
    }
    if (!findings.deed(effect).isPriced()) {
      return "The file does not say what it costs.";
    }
    Estimate more = cost.get();
    if (more.low() == 0 && more.high() == 0) {
      return "It costs nothing more, by the prices of the file.";
    }
    if (more.low() <= 0 && more.high() >= 0) {
      return "No difference in cost could be shown.";
    }
    boolean dearer = more.value() > 0;
    Optional<String> currency = findings.study().studio().currency();
    return (dearer ? "It costs " : "It saves ")
        + Numbers.money(dearer ? more : more.negated(), currency)
        + (dearer ? " more." : ".");
  }

  /** The layout as it is. */
  String asItIs() {
    Effects effects = findings.effects();
    String cost =
        effects
            .base()
            .cost()
            .map(
                each ->
                    " and pay "
                        + Numbers.money(each.total(), findings.study().studio().currency())
                        + " by then on average")
            .orElse("");
    return String.format(
        Locale.ROOT,
        "As it is, %s of %s lose footage within %s%s. With one change, so many fewer lose any:",
        Numbers.studios(effects.base().anyLoss(), outOf),
        outOf.words(),
        horizon(),
        cost);
  }

  /** The table of all changes; above each row stands its title. */
  Table table(PageLook look) {
    String currency = findings.study().studio().currency().map(c -> " (" + c + ")").orElse("");
    String fewer = "Fewer of " + outOf.number();
    String less = "Less lost on average";
    return isPriced()
        ? new Table(
            look,
            List.of("", fewer, less, "More cost" + currency, "Per " + (int) PER),
            INDENT,
            FEWER,
            BYTES,
            COST,
            RISK)
        : new Table(look, List.of("", fewer, less), INDENT, FEWER, BYTES);
  }

  private boolean isPriced() {
    return findings.effects().base().cost().isPresent();
  }

  /** A row of figures. */
  String[] cells(MeasuredEffect effect) {
    String fewer = fewer(effect.difference());
    String less = bytes(effect.bytesDifference().negated());
    String per =
        findings.perMoney(effect, PER).map(risk -> ByteUnit.digits(outOf.count(risk))).orElse("");
    return isPriced()
        ? new String[] {"", fewer, less, costCell(effect), per}
        : new String[] {"", fewer, less};
  }

  private String costCell(MeasuredEffect effect) {
    return findings.deed(effect).isPriced()
        ? effect.costDifference().map(LeverWords::signed).orElse("")
        : effect.costDifference().map(cost -> "not priced").orElse("");
  }

  private String fewer(Estimate difference) {
    return Direction.of(difference) == Direction.NOT_MEASURABLE
        ? "not measurable"
        : ranged(difference.negated(), outOf.count(1));
  }

  private static String ranged(Estimate estimate, double factor) {
    int decimals = Numbers.decimals(estimate, factor);
    return Numbers.fixed(estimate.value() * factor, decimals)
        + Numbers.range(estimate, factor).map(range -> " (" + range + ")").orElse("");
  }

  private static String bytes(Estimate less) {
    if (less.low() <= 0 && less.high() >= 0) {
      return "not measurable";
    }
    ByteUnit unit = ByteUnit.of(Math.abs(less.value()));
    return String.format(
        Locale.ROOT,
        "%s %s (%s to %s)",
        ByteUnit.digits(unit.in(less.value())),
        unit.symbol(),
        ByteUnit.digits(unit.in(less.low())),
        ByteUnit.digits(unit.in(less.high())));
  }

  private static String signed(Estimate cost) {
    if (cost.low() == 0 && cost.high() == 0) {
      return "0";
    }
    if (cost.low() <= 0 && cost.high() >= 0) {
      return "not measurable";
    }
    return ranged(cost, 1);
  }

  /** One that makes it worse. */
  String worse(MeasuredEffect effect) {
    return lower(effect)
        + ", with which "
        + ranged(effect.difference(), outOf.count(1))
        + " of "
        + outOf.number()
        + " more lose footage";
  }

  /** One without a measurable effect, with its cost where that is known. */
  String without(MeasuredEffect effect) {
    Optional<String> dearer =
        effect
            .costDifference()
            .filter(cost -> findings.isDearer(effect))
            .map(
                cost ->
                    " (which costs "
                        + Numbers.money(cost, findings.study().studio().currency())
                        + " more)");
    return lower(effect) + dearer.orElse("");
  }

  /** Which of the best could not be put in order. */
  Optional<String> ties() {
    List<MeasuredEffect> less = findings.deeds(Direction.LESS);
    String tied =
        less.stream()
            .filter(each -> less.stream().anyMatch(other -> isTied(each, other)))
            .map(this::lower)
            .collect(Collectors.joining("; "));
    return tied.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "So few histories do not tell in which order these belong: "
                + tied
                + ". More time (--time) would.");
  }

  private boolean isTied(MeasuredEffect one, MeasuredEffect other) {
    return findings.effects().isTied(one.id(), other.id())
        || findings.effects().isTied(other.id(), one.id());
  }
}
