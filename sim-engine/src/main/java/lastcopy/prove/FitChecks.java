package lastcopy.prove;

import java.util.ArrayList;
import java.util.List;
import lastcopy.fit.Fitted;
import lastcopy.fit.LifeRecord;
import lastcopy.fit.LogRank;
import lastcopy.fit.Records;

/** Lifetimes fitted to published records against what others fitted to them. */
final class FitChecks {

  private static final double NO_YEAR = 1e6;

  /** A plus: still running then. */
  private static final String NIST = "54 187 216 240 244 335 361 373 375 386" + " 500+".repeat(10);

  private static final String BEARINGS =
      "17.88 28.92 33.00 41.52 42.12 45.60 48.48 51.84 51.96 54.12 55.56 67.80 68.64 68.64 68.88"
          + " 84.12 93.12 98.64 105.12 105.84 127.92 128.04 173.40";
  private static final String SIX_MP =
      "6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+";
  private static final String PLACEBO = "1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23";

  private FitChecks() {}

  static Topic records() {
    Fitted nist = Fitted.of(records(NIST), NO_YEAR, 0.95);
    Fitted bearings = Fitted.of(records(BEARINGS), NO_YEAR, 0.95);
    Fitted sixMp = Fitted.of(records(SIX_MP), NO_YEAR, 0.95);
    return new Topic("Lifetimes fitted to records, some still running")
        .from("NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten running at 500 h")
        .printed("Weibull shape", "1.7208", () -> nist.weibull().orElseThrow().shape().value())
        .printed("Weibull mean, h", "540.737", () -> nist.weibull().orElseThrow().mean())
        .printed("Weibull AIC", "154.27", () -> nist.weibull().orElseThrow().aic())
        .printed("lognormal AIC", "154.39", () -> nist.lognormal().orElseThrow().aic())
        .from("the same by R's survival 3.5-3")
        .printed("Weibull scale, h", "606.5276", () -> nist.weibull().orElseThrow().scale().value())
        .from("ball bearings, Lieblein, Zelen 1956, by R's survival 3.5-3")
        .printed(
            "Weibull scale", "81.87833", () -> bearings.weibull().orElseThrow().scale().value())
        .printed(
            "Weibull shape", "2.102059", () -> bearings.weibull().orElseThrow().shape().value())
        .from("6-MP, Freireich and others 1963, by R's survival 3.5-3")
        .printed("Kaplan-Meier after 10", ".752941", () -> sixMp.steps().get(2).survival())
        .printed("its standard error", ".0963497", () -> sixMp.steps().get(2).error())
        .printed("6-MP and placebo, log-rank", "16.79294", FitChecks::logRank)
        .from("late entries, by hand: 1 of 5, 1 of 5, 1 of 4, 1 of 2 fail")
        .printed("Kaplan-Meier at the end", ".24", FitChecks::lateEntries);
  }

  private static double logRank() {
    return LogRank.of(List.of(records(SIX_MP), records(PLACEBO))).chiSquare();
  }

  private static double lateEntries() {
    Records records =
        new Records(
            List.of(
                LifeRecord.failedAt(0, 5),
                LifeRecord.running(0, 8),
                LifeRecord.failedAt(2, 6),
                LifeRecord.failedAt(3, 9),
                LifeRecord.failedAt(1, 4),
                LifeRecord.running(4, 10)));
    return Fitted.of(records, NO_YEAR, 0.95).steps().get(3).survival();
  }

  private static Records records(String ages) {
    List<LifeRecord> records = new ArrayList<>();
    for (String age : ages.split(" ", -1)) {
      double exit = Double.parseDouble(age.replace("+", ""));
      records.add(age.endsWith("+") ? LifeRecord.running(0, exit) : LifeRecord.failedAt(0, exit));
    }
    return new Records(records);
  }
}
