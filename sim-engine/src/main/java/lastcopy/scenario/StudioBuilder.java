package lastcopy.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Makes a {@link Studio} with the defaults of the scenario file: a quiet desk, and no currency or
 * prices. Mutable; made by one thread.
 */
public final class StudioBuilder {

  private final String name;
  private final double years;
  private final List<Layout> layouts = new ArrayList<>();
  private Optional<String> currency = Optional.empty();
  private OptionalDouble energyPerKwh = OptionalDouble.empty();
  private Work work = Work.NONE;
  private Footage footage;
  private Desk desk = Desk.QUIET;

  StudioBuilder(String name, double years) {
    this.name = name;
    this.years = years;
  }

  /** What is shot, and when; required. */
  public StudioBuilder footage(Footage shot) {
    footage = Objects.requireNonNull(shot, "footage");
    return this;
  }

  /** Mishaps of the people and machines at the desk. */
  public StudioBuilder desk(Desk mishaps) {
    desk = Objects.requireNonNull(mishaps, "desk");
    return this;
  }

  /** A label for money. */
  public StudioBuilder currency(String label) {
    currency = Optional.of(label);
    return this;
  }

  /** What a kWh costs, at least 0. */
  public StudioBuilder energy(double pricePerKwh) {
    energyPerKwh = OptionalDouble.of(pricePerKwh);
    return this;
  }

  /** The owner's own time. */
  public StudioBuilder work(Work ownTime) {
    work = Objects.requireNonNull(ownTime, "work");
    return this;
  }

  /** One more layout to compare. */
  public StudioBuilder layout(Layout one) {
    layouts.add(Objects.requireNonNull(one, "layout"));
    return this;
  }

  /**
   * The studio.
   *
   * @throws IllegalArgumentException if there is no layout or ids repeat
   * @throws NullPointerException if it is not said what is shot
   */
  public Studio build() {
    return new Studio(name, years, currency, energyPerKwh, work, footage, desk, layouts);
  }
}
