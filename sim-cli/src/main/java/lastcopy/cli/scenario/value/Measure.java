package lastcopy.cli.scenario.value;

import java.util.Optional;
import java.util.OptionalDouble;

/** Quantities that a person types by themselves, read as they are in a file. */
public enum Measure {
  /** An amount of data, in bytes. */
  SIZE(UnitTable.SIZE),
  /** A time, in hours. */
  TIME(UnitTable.TIME),
  /** What a line carries, in bytes per second. */
  LINK(UnitTable.LINK);

  // A table does not change once it is made.
  @SuppressWarnings("ImmutableEnumChecker")
  private final UnitTable units;

  Measure(UnitTable units) {
    this.units = units;
  }

  /** A number with a unit of this kind, in the engine's unit; empty if it is none. */
  public OptionalDouble read(String text) {
    Optional<Quantity> parsed = Quantity.parse(text.strip()).filter(q -> !q.range());
    OptionalDouble factor =
        parsed.map(q -> units.factor(q.unit())).orElseGet(OptionalDouble::empty);
    return factor.isPresent()
        ? OptionalDouble.of(parsed.get().low() * factor.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The same quantity with the unit that was probably meant, such as {@code 20 Mbit/s}. */
  public Optional<String> meant(String text) {
    return Quantity.parse(text.strip())
        .filter(q -> !q.range() && !q.unit().isEmpty())
        .map(q -> units.suggest(q.unit()))
        .filter(unit -> !unit.isEmpty())
        .map(unit -> text.strip().replaceFirst("[^0-9.]*$", "") + " " + unit);
  }
}
