package lastcopy.history;

import java.util.ArrayList;
import java.util.List;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;

/** What is told of one history, and how things stood after each. */
record ToldHistory(List<Happening> what, List<Snapshot> then) {

  static ToldHistory of(History history, int number) {
    ToldHistory told = new ToldHistory(new ArrayList<>(), new ArrayList<>());
    history.tell(
        number,
        (each, now) -> {
          told.what.add(each);
          told.then.add(now);
        });
    return told;
  }

  List<Happening> all(Kind kind) {
    return what.stream().filter(each -> each.kind() == kind).toList();
  }

  /** How things stood after the first of a kind. */
  Snapshot after(Kind kind) {
    return then.get(what.indexOf(all(kind).get(0)));
  }

  /** What it weighs at its end. */
  double weight() {
    return then.get(then.size() - 1).weight();
  }

  /** The bytes that are lost at an instant. */
  double lostAt(double hours) {
    return all(Kind.LOST).stream()
        .filter(each -> each.hours() == hours)
        .mapToDouble(Happening::bytes)
        .sum();
  }

  /** Those of a kind until the first loss, after which nothing weighs any more. */
  List<Happening> untilALoss(Kind kind) {
    double lost =
        all(Kind.LOST).stream().mapToDouble(Happening::hours).findFirst().orElse(Double.MAX_VALUE);
    return all(kind).stream().filter(each -> each.hours() <= lost).toList();
  }
}
