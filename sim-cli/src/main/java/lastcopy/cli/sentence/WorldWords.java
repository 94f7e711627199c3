package lastcopy.cli.sentence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.UnknownWords;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/** What is not known, in words: between what a chance may lie, and what makes the difference. */
public final class WorldWords {

  /** So many unknowns are told, those that matter most; the files have all. */
  private static final int MOST_UNKNOWNS = 5;

  private static final double LEAST_SHARE = 0.005;

  private final Comparison result;
  private final Worlds worlds;
  private final OutOf outOf;
  private final List<Said> said = new ArrayList<>();

  private WorldWords(Comparison result, Worlds worlds, OutOf outOf) {
    this.result = result;
    this.worlds = worlds;
    this.outOf = outOf;
  }

  /**
   * Something said.
   *
   * @param first what a line of a page begins with; of a paragraph nothing
   * @param rest what other lines of a page begin with
   * @param words what is said; nothing of a gap
   */
  public record Said(String first, String rest, String words) {

    private static final Said GAP = new Said("", "", "");

    private static Said paragraph(String words) {
      return new Said("", "", words);
    }

    /** Whether it is one of a list. */
    public boolean item() {
      return !first.isEmpty();
    }

    /** What is said, in one line. */
    public String line() {
      return (first.strip() + " " + words).strip();
    }

    private String on(PageLook look) {
      return words.isEmpty() ? "\n" : look.lines(first, rest, words);
    }
  }

  /**
   * What is said, but for gaps; nothing where all is known.
   *
   * @param outOf of how many studios, as beside it
   */
  public static List<Said> sentences(Comparison result, OutOf outOf) {
    return all(result, outOf).stream().filter(each -> !each.words().isEmpty()).toList();
  }

  /** The same on a page of some look. */
  public static String of(Comparison result, OutOf outOf, PageLook look) {
    return all(result, outOf).stream().map(each -> each.on(look)).collect(Collectors.joining());
  }

  private static List<Said> all(Comparison result, OutOf outOf) {
    return result
        .worlds()
        .map(worlds -> new WorldWords(result, worlds, outOf).say())
        .orElse(List.of());
  }

  /** Which of the ranges makes most of the difference, in a sentence, or why that is not told. */
  public static String mattersMost(Comparison result) {
    if (result.worlds().isEmpty()) {
      return "Which assumption matters most is not told: the file gives each rate as one number."
          + " With ranges (1..4 %/year) it would be told here; \"lastcopy levers\" tries each at"
          + " half and at double.";
    }
    return result.worlds().get().unknowns().stream()
        .max(Comparator.comparingDouble(WorldWords::share))
        .filter(unknown -> share(unknown) >= LEAST_SHARE)
        .map(
            unknown ->
                String.format(
                    Locale.ROOT,
                    "The assumption that matters most is %s, given as %s: it makes %.0f %% of how"
                        + " much the chance of loss may differ.",
                    unknown.key(),
                    range(unknown),
                    100 * share(unknown)))
        .orElse("No range in the file makes a difference that could be told.");
  }

  private List<Said> say() {
    paragraph(
        String.format(
            Locale.ROOT,
            "Some rates in the file are ranges. The chances are means over the worlds that they"
                + " leave possible; in 9 of 10 of these, of %s, so many lose any footage:",
            outOf.words()));
    for (LayoutResult layout : result.layouts()) {
      worlds.layout(layout.id()).ifPresent(of -> layout(layout, of));
    }
    said.add(Said.GAP);
    unknowns();
    pairs();
    return said;
  }

  private void layout(LayoutResult layout, Worlds.OfLayout of) {
    String words = of.anyLoss().percentiles().map(this::between).orElse(untold(layout.anyLoss()));
    said.add(new Said("  ", "    ", layout.title() + ": " + words));
  }

  private static String untold(Estimate chance) {
    String few = chance.value() > 0.5 ? "too few kept all" : "too few lost any";
    return few + " to say what the ranges leave possible";
  }

  private String between(Worlds.Percentiles all) {
    if (error(all) >= outOf.studios()) {
      return "too few histories to say what the ranges leave possible";
    }
    if (outOf.count(all.p95().value()) < 1) {
      return "fewer than 1 in nearly all of them";
    }
    return String.format(
        Locale.ROOT,
        "between %s and %s, most likely about %s (what is not known); the simulation's own error is"
            + " under %s",
        studios(all.p5()),
        studios(all.p95()),
        studios(all.p50()),
        Numbers.fixed(error(all), 0));
  }

  /** To three digits: what is not known is not known to more. */
  private String studios(Estimate chance) {
    double count = outOf.count(chance.value());
    if (count < 1) {
      return "fewer than 1";
    }
    double unit = unit(count, 3);
    return Numbers.fixed(Math.rint(count / unit) * unit, count < 9.95 ? 1 : 0);
  }

  private double error(Worlds.Percentiles all) {
    return Stream.of(all.p5(), all.p50(), all.p95())
        .mapToDouble(p -> Math.max(p.high() - p.value(), p.value() - p.low()))
        .map(half -> roundedUp(outOf.count(half)))
        .max()
        .orElseThrow();
  }

  /** To two digits, and whole. */
  private static double roundedUp(double count) {
    double unit = Math.max(1, unit(count, 2));
    return (Math.floor(count / unit) + 1) * unit;
  }

  /** The power of ten in the last of so many digits. */
  private static double unit(double count, int digits) {
    double power = Math.floor(Math.log10(Math.max(1, count))) + 1 - digits;
    return Math.pow(10, power);
  }

  private void unknowns() {
    List<Worlds.OfUnknown> ranked =
        worlds.unknowns().stream()
            .filter(unknown -> share(unknown) >= LEAST_SHARE)
            .sorted(Comparator.comparingDouble(unknown -> -share(unknown)))
            .limit(MOST_UNKNOWNS)
            .toList();
    if (ranked.isEmpty()) {
      return;
    }
    String each = result.layouts().size() > 1 ? ", on average over the layouts" : "";
    paragraph("How much of that comes from each of what is not known" + each + ":");
    for (Worlds.OfUnknown unknown : ranked) {
      String share = String.format(Locale.ROOT, "%3.0f %%  ", 100 * share(unknown));
      said.add(new Said("  " + share, "         ", unknown.key() + ": " + range(unknown)));
    }
    said.add(Said.GAP);
  }

  private static String range(Worlds.OfUnknown unknown) {
    return UnknownWords.range(unknown.from(), unknown.to(), unknown.unit());
  }

  private static double share(Worlds.OfUnknown unknown) {
    return unknown.shares().stream().mapToDouble(of -> of.share().value()).average().orElse(0);
  }

  private void pairs() {
    List<String> ids = result.layouts().stream().map(LayoutResult::id).toList();
    List<String> sentences = new ArrayList<>();
    for (Worlds.OfPair pair : worlds.pairs()) {
      int a = ids.indexOf(pair.a());
      int b = ids.indexOf(pair.b());
      if (a == 0 || b == a + 1) {
        sentences.add(sentence(pair, result.layouts().get(a), result.layouts().get(b)));
      }
    }
    sentences.forEach(this::paragraph);
    if (!sentences.isEmpty()) {
      said.add(Said.GAP);
    }
  }

  private static String sentence(Worlds.OfPair pair, LayoutResult a, LayoutResult b) {
    Estimate share = pair.aLosesLess();
    return share.value() >= 0.5
        ? less(share, a, b)
        : less(new Estimate(1 - share.value(), 1 - share.high(), 1 - share.low(), true), b, a);
  }

  private static String less(Estimate share, LayoutResult better, LayoutResult worse) {
    String names = PairSentences.quoted(better) + " loses less than " + PairSentences.quoted(worse);
    if (share.low() > 0.99) {
      return names + " in more than 99 of 100 possible worlds.";
    }
    return String.format(
        Locale.ROOT,
        "%s in %.0f of 100 possible worlds (%.0f to %.0f).",
        names,
        100 * share.value(),
        100 * share.low(),
        100 * share.high());
  }

  private void paragraph(String words) {
    said.add(Said.paragraph(words));
  }
}
