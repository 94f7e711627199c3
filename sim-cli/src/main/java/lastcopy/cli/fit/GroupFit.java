package lastcopy.cli.fit;

import java.util.Optional;
import lastcopy.fit.Fitted;
import lastcopy.fit.Records;
import lastcopy.typical.DriveKind;

/**
 * What the records of one group say.
 *
 * @param name of the group; {@code all} for all records together
 * @param fitted laws and curves
 * @param typical what typical drives would have done, unless it is not to be asked
 * @param line for a scenario, if they give one
 */
record GroupFit(
    String name, Fitted fitted, Optional<TypicalShare> typical, Optional<FailsLine> line) {

  static GroupFit of(
      String name, Records records, Optional<DriveKind> kind, AgeUnit unit, double confidence) {
    Fitted fitted = Fitted.of(records, unit.year(), confidence);
    Optional<TypicalShare> typical =
        kind.map(drives -> TypicalShare.of(drives, records, unit.year()));
    return new GroupFit(name, fitted, typical, FailsLine.of(fitted, typical, unit));
  }
}
