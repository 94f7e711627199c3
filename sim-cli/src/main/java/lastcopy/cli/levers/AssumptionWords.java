package lastcopy.cli.levers;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Spans;
import lastcopy.cli.output.Wrap;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Flip;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Which assumption matters, in words. */
record AssumptionWords(AssumptionStudy study, OutOf outOf) {

  private static final int COLUMN = 26;

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

  /** The whole section. */
  String section() {
    StringBuilder text = new StringBuilder("\nWhich assumption matters\n\n");
    List<Swing> swings = swings();
    List<Swing> told = swings.stream().filter(Swing::isMeasurable).toList();
    text.append(
        Wrap.lines(
            "",
            "",
            told.isEmpty()
                ? "None of the numbers that this layout takes for granted moves its chance of loss"
                    + " measurably at half or at double."
                : "What is assumed at half and at double: of "
                    + outOf.words()
                    + ", so many lose any footage then, and so many more or fewer:"));
    if (!told.isEmpty()) {
      text.append('\n')
          .append(Wrap.column("", 2))
          .append(Wrap.column("At half", COLUMN))
          .append("At double\n")
          .append("-".repeat(Wrap.WIDTH))
          .append('\n');
      told.forEach(swing -> text.append(row(swing)));
    }
    String others =
        swings.stream()
            .filter(swing -> !swing.isMeasurable())
            .map(swing -> swing.assumption().title())
            .collect(Collectors.joining("; "));
    if (!others.isEmpty() && !told.isEmpty()) {
      text.append('\n')
          .append(Wrap.lines("", "", "No effect could be measured of: " + others + "."));
    }
    flips().ifPresent(words -> text.append('\n').append(words));
    text.append('\n')
        .append(
            Wrap.lines(
                "",
                "",
                String.format(
                    Locale.ROOT,
                    "What is assumed, from %,d histories of each%s.",
                    study.effects().histories(),
                    study.effects().method() == Method.RARE ? ", biased towards losses" : "")));
    return text.toString();
  }

  private String row(Swing swing) {
    String title = capital(swing.assumption().title()) + ": " + value(swing.assumption(), 1);
    return Wrap.lines("", "  ", title)
        + ("  " + Wrap.column(cell(swing.half()), COLUMN) + cell(swing.twice())).stripTrailing()
        + '\n';
  }

  private String cell(MeasuredEffect effect) {
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

  /** Where the order of the first two layouts turns round. */
  private Optional<String> flips() {
    if (study.first().isEmpty() || study.second().isEmpty()) {
      return Optional.empty();
    }
    List<Flip> found = study.flips().stream().filter(f -> f.factor().isPresent()).toList();
    String pair =
        "\"" + study.first().get().title() + "\" or \"" + study.second().get().title() + "\"?";
    StringBuilder text = new StringBuilder(Wrap.lines("", "", pair));
    found.forEach(flip -> text.append(Wrap.lines("  ", "    ", sentence(flip))));
    long late = study.flips().size() - looked();
    if (found.isEmpty() && late == 0) {
      text.append(
          Wrap.lines("  ", "    ", "No value between a tenth and ten times flips which is safer."));
    } else if (looked() > found.size()) {
      String others =
          String.format(
              Locale.ROOT,
              "Of %,d%s numbers no value between a tenth and ten times does.",
              looked() - found.size(),
              found.isEmpty() ? "" : " other");
      text.append(Wrap.lines("  ", "    ", others));
    }
    if (late > 0) {
      String words =
          String.format(
              Locale.ROOT,
              "Of %,d it could not be told whether any value flips which is safer: too few"
                  + " histories, too rare losses or too little time.",
              late);
      text.append(Wrap.lines("  ", "    ", words));
    }
    return Optional.of(text.toString());
  }

  private long looked() {
    return study.flips().stream().filter(Flip::isLooked).count();
  }

  private String sentence(Flip flip) {
    Estimate factor = flip.factor().orElseThrow();
    Assumption of = flip.assumption();
    return String.format(
        Locale.ROOT,
        "Which is safer turns round at %s (between %s and %s), %s: it is %s now.",
        value(of, factor.value()),
        value(of, factor.low()),
        value(of, factor.high()),
        of.title(),
        value(of, 1));
  }

  static String capital(String title) {
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }
}
