package lastcopy.oracle;

import lastcopy.law.Law;
import lastcopy.scenario.DriveModel;

/** One drive: its age, and how much of its unit-exponential budget of hazard is left. */
final class Disk {

  final DriveModel model;
  private double age;
  private double frailty = 1;
  private double factor = 1;
  private boolean off;
  private double budget;
  private double asOf;

  /** False from its failure until a new one is whole in its stead. */
  boolean whole = true;

  /** Whether one in its stead has arrived, which is not whole yet. */
  boolean arrived;

  /** A spot that cannot be read. */
  boolean defect;

  /** Changes with every plan that is overthrown, so that what was planned before does nothing. */
  int planned;

  int defectPlanned;

  Disk(DriveModel model) {
    this.model = model;
  }

  void begin(double now, double startAge, double itsFrailty, double unitExponential) {
    age = startAge;
    frailty = itsFrailty;
    budget = unitExponential;
    asOf = now;
    whole = true;
    arrived = false;
    defect = false;
    planned++;
    defectPlanned++;
  }

  void fail() {
    whole = false;
    arrived = false;
    defect = false;
    planned++;
    defectPlanned++;
  }

  /** From now on its hazard is multiplied so, and it is on or off. */
  void change(double now, double itsFactor, boolean isOff) {
    double later = age + now - asOf;
    budget -= rate() * (law().cumulativeHazard(later) - law().cumulativeHazard(age));
    budget = Math.max(0, budget);
    age = later;
    asOf = now;
    factor = itsFactor;
    off = isOff;
    planned++;
  }

  /** When it fails if nothing changes. */
  double failsAt() {
    return rate() == 0 ? Double.POSITIVE_INFINITY : asOf + law().remaining(age, budget / rate());
  }

  /** When it reaches an age. */
  double reaches(double otherAge) {
    return asOf + otherAge - age;
  }

  private double rate() {
    return frailty * factor;
  }

  private Law law() {
    return off ? model.failsOff().orElse(model.fails()) : model.fails();
  }
}
