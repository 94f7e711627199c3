package lastcopy.cli.levers;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Spans;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Which assumption matters, in words. */
record AssumptionWords(AssumptionStudy study, OutOf outOf) {

  /** A number, with what it does at half and at double. */
  record Swing(Assumption assumption, MeasuredEffect half, MeasuredEffect twice) {

    double size() {
      return Math.max(Math.abs(half.difference().value()), Math.abs(twice.difference().value()));
    }

    boolean isMeasurable() {
      return half.direction() != Direction.NOT_MEASURABLE
          || twice.direction() != Direction.NOT_MEASURABLE;
    }
  }

  /** The numbers, that which moves the chance of a loss most first. */
  List<Swing> swings() {
    return study.assumptions().stream()
        .map(
            each ->
                new Swing(
                    each,
                    effect(each.id() + AssumptionStudy.HALF),
                    effect(each.id() + AssumptionStudy.DOUBLE)))
        .sorted(Comparator.comparingDouble(swing -> -swing.size()))
        .toList();
  }

  private MeasuredEffect effect(String id) {
    return study.effects().ranked().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** What a number does, times a factor. */
  String cell(MeasuredEffect effect) {
    Estimate difference = effect.difference();
    if (effect.direction() == Direction.NOT_MEASURABLE) {
      return "not measurable";
    }
    double factor = outOf.count(1);
    int decimals = Numbers.decimals(difference, factor);
    boolean more = difference.value() > 0;
    Estimate told = more ? difference : difference.negated();
    return Numbers.fixed(told.value() * factor, decimals)
        + Numbers.range(told, factor).map(range -> " (" + range + ")").orElse("")
        + (more ? " more" : " fewer");
  }

  /** A number times a factor, as an owner would say it. */
  static String value(Assumption of, double factor) {
    double value = of.value() * factor;
    return switch (of.unit()) {
      case HAZARD_PER_YEAR -> ByteUnit.digits(-100 * StrictMath.expm1(-value)) + " % a year";
      case HOURS -> Spans.span(value);
      case BYTES_PER_SECOND -> ByteUnit.digits(value * 8 / 1e6) + " Mbit/s";
      case FACTOR -> ByteUnit.digits(value);
      case SHARE_PER_YEAR -> ByteUnit.digits(100 * value) + " % a year";
      case CHANCE -> String.format(Locale.ROOT, "%.2g of each bit", value);
    };
  }

  static String capital(String title) {
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }
}
