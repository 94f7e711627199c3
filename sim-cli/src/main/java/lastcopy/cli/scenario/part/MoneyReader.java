package lastcopy.cli.scenario.part;

import java.util.List;
import java.util.regex.Pattern;
import lastcopy.cli.scenario.value.Bound;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.Maybe;
import lastcopy.cli.scenario.value.Section;
import lastcopy.cli.scenario.value.UnitTable;
import lastcopy.cli.scenario.value.Values;
import lastcopy.cli.scenario.yaml.Nodes;
import lastcopy.cli.scenario.yaml.Notes;
import lastcopy.scenario.Costs;
import lastcopy.scenario.Work;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Reads money, and what it is paid for. An amount is a number without a currency: all amounts of a
 * file are in its one currency.
 */
public final class MoneyReader {
  /** A sign or three capital letters before or after a number. */
  private static final Pattern WITH_CURRENCY =
      Pattern.compile(
          "(\\p{Sc}|[A-Z]{3}\\b)\\s*[+-]?[\\d.].*|[+-]?[\\d.,]+\\s*(\\p{Sc}|[A-Z]{3}\\b).*");

  private final Notes notes;
  private final Values values;

  /** Notes mistakes into these. */
  public MoneyReader(Notes notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  /** An amount, such as the price of a drive. */
  double amount(Node node) {
    return hasCurrency(node, "a number alone, such as 180") ? 0 : values.number(node, Bound.MONEY);
  }

  /** An amount per something, such as {@code 5 per TB per month}. */
  double per(Node node, UnitTable what) {
    return hasCurrency(node, what.example()) ? 0 : values.quantity(node, what, Bound.MONEY);
  }

  private boolean hasCurrency(Node node, String example) {
    if (!WITH_CURRENCY.matcher(Nodes.text(node)).matches()) {
      return false;
    }
    String accepted =
        example + ": all amounts of a file are in one currency, which 'currency' names";
    notes.problem(node, Nodes.describe(node) + ", an amount with a currency", accepted);
    return true;
  }

  /** A power in watts. */
  double watts(Node node) {
    return values.quantity(node, UnitTable.POWER, Bound.WATTS);
  }

  /** Whatever else a layout or a copy takes. */
  public Costs costs(Node node, String where) {
    Section section = Section.of(notes, Kind.COSTS, node, where + ".costs");
    return new Costs(
        section.get("once").map(this::amount).orElse(0.0),
        section.get("per_year").map(this::amount).orElse(0.0),
        section.get("per_month").map(this::amount).orElse(0.0));
  }

  /** The owner's own time. */
  Work work(Node node) {
    Section section = Section.of(notes, Kind.WORK, node, "work");
    return new Work(
        Maybe.number(section.get("price"), n -> per(n, UnitTable.PER_HOUR)),
        hours(section, "repair"),
        hours(section, "visit"),
        hours(section, "look"),
        hours(section, "trial"));
  }

  private double hours(Section section, String key) {
    return section.get(key).map(n -> values.time(n, Bound.OWN_TIME)).orElse(0.0);
  }

  /** Whether it is so; a word that is neither true nor false is noted. */
  boolean isTrue(Node node) {
    return values.word(node, List.of("false", "true")).equals("true");
  }
}
