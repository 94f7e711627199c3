package lastcopy.cli.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.fit.LogRank;
import lastcopy.fit.Records;
import lastcopy.typical.DriveKind;

/**
 * All that a file of records says.
 *
 * @param file its name
 * @param unit of ages in the file and in the result
 * @param confidence of intervals
 * @param all all records together
 * @param groups each group by itself; empty if the file tells fewer than two apart
 * @param comparison whether the groups fail alike, where ages at failure are known
 */
record FitResult(
    String file,
    AgeUnit unit,
    double confidence,
    GroupFit all,
    List<GroupFit> groups,
    Optional<LogRank> comparison) {

  static FitResult of(
      String file,
      RecordsFile.Read read,
      AgeUnit unit,
      Optional<DriveKind> kind,
      double confidence) {
    List<GroupFit> groups = new ArrayList<>();
    if (read.groups().size() > 1) {
      read.groups()
          .forEach(
              (name, records) -> groups.add(GroupFit.of(name, records, kind, unit, confidence)));
    }
    boolean comparable = groups.size() > 1 && !read.all().between() && read.all().failures() > 0;
    List<Records> apart = List.copyOf(read.groups().values());
    return new FitResult(
        file,
        unit,
        confidence,
        GroupFit.of("all", read.all(), kind, unit, confidence),
        List.copyOf(groups),
        comparable ? Optional.of(LogRank.of(apart)) : Optional.empty());
  }
}
