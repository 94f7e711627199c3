package lastcopy.scenario;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * Makes a {@link Copy} with the defaults of the scenario file: in a place of its own without
 * mishaps, failures seen and hardware replaced at once, online, full at the start, keeping nothing
 * that is deleted. Mutable; made by one thread.
 */
public final class CopyBuilder {

  private final String id;
  private Place place;
  private Optional<Box> box = Optional.empty();
  private Medium medium;
  private Delay noticed = Delay.none();
  private Optional<Delay> goneNoticed = Optional.empty();
  private Law arrival = new Fixed(0);
  private Optional<Feed> feed = Optional.empty();
  private OptionalDouble restoresAt = OptionalDouble.empty();
  private double keepsDeletedHours;
  private Copy.Reach reach = Copy.Reach.ONLINE;
  private boolean startsFull = true;
  private Optional<Copy.Spoils> spoils = Optional.empty();
  private Optional<Copy.Rotation> rotation = Optional.empty();
  private Costs costs = Costs.NONE;
  private Set<Copy.LeftOut> leftOut = Set.of();

  CopyBuilder(String id) {
    this.id = id;
    place = Place.ofItsOwn(id);
  }

  /** What it is stored on; required. */
  public CopyBuilder on(Medium drivesOrService) {
    medium = Objects.requireNonNull(drivesOrService, "medium");
    return this;
  }

  /** Where it stands. */
  public CopyBuilder at(Place where) {
    place = Objects.requireNonNull(where, "place");
    return this;
  }

  /** The enclosure of its drives. */
  public CopyBuilder in(Box enclosure) {
    box = Optional.of(enclosure);
    return this;
  }

  /** How long the failure of a drive goes unnoticed, and of the whole copy unless that is said. */
  public CopyBuilder noticed(Delay delay) {
    noticed = Objects.requireNonNull(delay, "noticed");
    return this;
  }

  /** How long the loss of the whole copy goes unnoticed; otherwise as that of a drive. */
  public CopyBuilder goneNoticed(Delay delay) {
    goneNoticed = Optional.of(delay);
    return this;
  }

  /** How long until a replacement has arrived, in hours. */
  public CopyBuilder arrival(Law hours) {
    arrival = Objects.requireNonNull(hours, "wait");
    return this;
  }

  /** How it is fed; every copy but the first of a layout needs it. */
  public CopyBuilder fed(Feed by) {
    feed = Optional.of(by);
    return this;
  }

  /** The rate at which others are refilled from it, above 0; otherwise the link's or drive's. */
  public CopyBuilder restoresAt(double bytesPerSecond) {
    restoresAt = OptionalDouble.of(bytesPerSecond);
    return this;
  }

  /** How long it holds what was deleted at its source, in hours, at least 0, infinite for good. */
  public CopyBuilder keepsDeleted(double hours) {
    keepsDeletedHours = hours;
    return this;
  }

  /** Whether malware at the desk can reach it. */
  public CopyBuilder reach(Copy.Reach byMalware) {
    reach = Objects.requireNonNull(byMalware, "reach");
    return this;
  }

  /** Malware at the desk cannot reach it. */
  public CopyBuilder offline() {
    return reach(Copy.Reach.OFFLINE);
  }

  /** Whether it holds the footage on hand at the start. */
  public CopyBuilder startsFull(boolean full) {
    startsFull = full;
    return this;
  }

  /** It holds nothing at the start. */
  public CopyBuilder startsEmpty() {
    return startsFull(false);
  }

  /** How it turns out unusable. */
  public CopyBuilder spoils(Copy.Spoils how) {
    spoils = Optional.of(how);
    return this;
  }

  /** It turns out unusable at a rate, and nobody tries to restore from it. */
  public CopyBuilder spoils(Rate rate) {
    return spoils(new Copy.Spoils(rate, OptionalDouble.empty()));
  }

  /** It turns out unusable at a rate; a restore is tried every so many hours. */
  public CopyBuilder spoils(Rate rate, double triedEveryHours) {
    return spoils(new Copy.Spoils(rate, OptionalDouble.of(triedEveryHours)));
  }

  /** It consists of so many drives or sets, at least 2, that take turns every so many hours. */
  public CopyBuilder rotation(int turns, double everyHours) {
    rotation = Optional.of(new Copy.Rotation(turns, everyHours));
    return this;
  }

  /** Whatever else it takes; once for all turns of a rotation. */
  public CopyBuilder costs(Costs others) {
    costs = Objects.requireNonNull(others, "costs");
    return this;
  }

  /** Keys that nothing is said of although something hangs on them. */
  public CopyBuilder leftOut(Set<Copy.LeftOut> keys) {
    leftOut = Objects.requireNonNull(keys, "left out");
    return this;
  }

  /**
   * The copy.
   *
   * @throws IllegalArgumentException if a value is out of its range
   * @throws NullPointerException if it is not said what it is stored on
   */
  public Copy build() {
    return new Copy(
        id,
        place,
        box,
        medium,
        new Copy.Repair(noticed, goneNoticed.orElse(noticed), arrival),
        feed,
        restoresAt,
        keepsDeletedHours,
        reach,
        startsFull,
        spoils,
        rotation,
        costs,
        leftOut);
  }
}
