package lastcopy.cli.scenario.value;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.scenario.Unknown;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads single values; a mistake is noted and a harmless value stands in for it. */
public final class Values {
  /** In the engine's units: bytes, hours, bytes a second. Beyond them it is a slip of the pen. */
  private static final double LEAST = 1e-9;

  private static final double MOST = 1e21;

  private static final String FACTOR = "a factor on the hazard, such as 2 or 0.5..2.5";

  /** Inside every bound, so that it causes no mistakes of its own. */
  private static final double STAND_IN = 0.5;

  private final Notes notes;

  /** Notes mistakes into these. */
  public Values(Notes notes) {
    this.notes = notes;
  }

  /** A size in bytes. */
  public double size(Node node, Bound bound) {
    return quantity(node, UnitTable.SIZE, bound);
  }

  /** A time in hours. */
  public double time(Node node, Bound bound) {
    return quantity(node, UnitTable.TIME, bound);
  }

  /** A rate in bytes per second, above 0. */
  public double link(Node node) {
    return quantity(node, UnitTable.LINK, Bound.ABOVE_ZERO);
  }

  /** A quantity in the engine's unit. */
  public double quantity(Node node, UnitTable units, Bound bound) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node));
    if (parsed.isEmpty()) {
      return wrong(node, units.example());
    }
    OptionalDouble factor = units.factor(parsed.get().unit());
    if (factor.isEmpty()) {
      return wrongUnit(node, parsed.get().unit(), units);
    }
    return single(node, parsed.get(), factor.getAsDouble(), units.example(), bound);
  }

  /** A mean in hours above 0, which may be a range. */
  public double mean(Node node) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node)).filter(Quantity::range);
    if (parsed.isEmpty() || UnitTable.TIME.factor(parsed.get().unit()).isEmpty()) {
      return time(node, Bound.ABOVE_ZERO);
    }
    String accepted = "a mean such as 50000 h";
    double factor = UnitTable.TIME.factor(parsed.get().unit()).getAsDouble();
    Quantity ends = parsed.get();
    double low = bounded(node, ends.low() * factor, accepted, Bound.ABOVE_ZERO);
    double high = bounded(node, ends.high() * factor, accepted, Bound.ABOVE_ZERO);
    return isRange(node, ends, accepted) ? between(node, ends, low, high, -1) : low;
  }

  /** A factor on a hazard, which may be a range. */
  public double factor(Node node) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node)).filter(q -> q.unit().isEmpty());
    if (parsed.isEmpty()) {
      return wrong(node, FACTOR);
    }
    Quantity ends = parsed.get();
    double low = bounded(node, ends.low(), FACTOR, Bound.TIMES);
    double high = bounded(node, ends.high(), FACTOR, Bound.TIMES);
    return isRange(node, ends, FACTOR) ? between(node, ends, low, high, 1) : low;
  }

  /** Whether it is a range of some width; a mistake is noted, and none is one. */
  private boolean isRange(Node node, Quantity ends, String accepted) {
    if (ends.range() && !(ends.low() > 0 && ends.high() >= ends.low())) {
      wrong(node, accepted + ", or a range of two ends above 0, the lower first");
      return false;
    }
    return ends.high() > ends.low();
  }

  /** What stands in for a range; in a larger world there is more hazard. */
  private double between(Node node, Quantity ends, double low, double high, int sign) {
    double z = notes.ranges().deviate(node, ends.low(), ends.high(), ends.unit());
    return Unknown.between(low, high, sign * z);
  }

  /** A bare number. */
  public double number(Node node, Bound bound) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node));
    if (parsed.isEmpty() || !parsed.get().unit().isEmpty()) {
      return wrong(node, bound.words());
    }
    return single(node, parsed.get(), 1, bound.words(), bound);
  }

  /** A share as a number, or in %. */
  public double share(Node node, Bound bound) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node));
    if (parsed.isPresent() && parsed.get().unit().equals("%")) {
      return single(node, parsed.get(), 0.01, bound.words(), bound);
    }
    return number(node, bound);
  }

  /** A chance or a rate, which may be a range. */
  public Chance chance(Node node) {
    Optional<Quantity> parsed = Quantity.parse(Nodes.text(node));
    if (parsed.isEmpty()) {
      wrong(node, Chance.EXAMPLE);
      return Chance.STAND_IN;
    }
    Optional<Chance> chance = Chance.of(parsed.get().low(), parsed.get().unit());
    if (chance.isEmpty()) {
      String unit = parsed.get().unit();
      wrongUnit(node, unit, Chance.EXAMPLE, Chance.suggest(parsed.get().low(), unit));
      return Chance.STAND_IN;
    }
    return checked(node, parsed.get(), chance.get());
  }

  private Chance checked(Node node, Quantity quantity, Chance low) {
    Chance high = Chance.of(quantity.high(), quantity.unit()).orElse(low);
    if (!low.holds() || !high.holds()) {
      wrong(node, low.words());
      return Chance.STAND_IN;
    }
    return isRange(node, quantity, Chance.EXAMPLE)
        ? new Chance(between(node, quantity, low.hazard(), high.hazard(), 1), false)
        : low;
  }

  /** One of a few words; the first if it is none of them. */
  public String word(Node node, List<String> words) {
    String text = Nodes.text(node);
    if (words.contains(text)) {
      return text;
    }
    String accepted = String.join(", ", words);
    notes.problem(node, Nodes.describe(node), accepted, Spelling.nearest(text, words));
    return words.get(0);
  }

  /** Some text; a mistake if there is none. */
  public String text(Node node, String accepted) {
    String text = Nodes.text(node);
    if (text.isEmpty()) {
      notes.problem(node, Nodes.describe(node), accepted);
      return "?";
    }
    return text;
  }

  /** A name that must be one of the known ones; empty if it is not. */
  public Optional<String> reference(Node node, String what, List<String> known) {
    String name = Nodes.text(node);
    if (known.contains(name)) {
      return Optional.of(name);
    }
    String accepted = known.isEmpty() ? what + " defined in this file" : String.join(", ", known);
    String found = Nodes.describe(node) + ", which is no " + what;
    notes.problem(node, found, accepted, Spelling.nearest(name, known));
    return Optional.empty();
  }

  /** Notes that a value is not what is accepted; a number that does no harm. */
  public double wrong(Node node, String accepted) {
    notes.problem(node, Nodes.describe(node), accepted);
    return STAND_IN;
  }

  private double wrongUnit(Node node, String unit, UnitTable units) {
    return wrongUnit(node, unit, units.example(), units.suggest(unit));
  }

  private double wrongUnit(Node node, String unit, String example, String near) {
    String found =
        Nodes.describe(node)
            + (unit.isEmpty()
                ? ", a number without a unit"
                : " with the unknown unit '" + unit + "'");
    notes.problem(node, found, example, unit.isEmpty() ? "" : near);
    return STAND_IN;
  }

  private double single(Node node, Quantity quantity, double factor, String accepted, Bound bound) {
    double value = quantity.low() * factor;
    if (quantity.range()) {
      return wrong(node, accepted + "; a range only on a chance, a rate or a mean");
    }
    return bounded(node, value, accepted, bound);
  }

  private double bounded(Node node, double value, String accepted, Bound bound) {
    boolean plain = accepted.equals(bound.words());
    if (!bound.holds(value)) {
      return wrong(node, plain ? accepted : accepted + "; " + bound.words());
    }
    boolean tooLarge = bound.holds(MOST) && value > MOST;
    boolean tooSmall = bound == Bound.ABOVE_ZERO && value < LEAST;
    if (tooLarge || tooSmall) {
      return wrong(node, accepted + "; nothing so " + (tooLarge ? "large" : "small"));
    }
    return value;
  }
}
