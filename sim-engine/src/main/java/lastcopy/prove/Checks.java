package lastcopy.prove;

import java.util.List;
import java.util.stream.Stream;

/** Every check that this program comes with. */
public final class Checks {

  private Checks() {}

  /** In the order of the table: closed forms first, since the engine is held against them. */
  public static List<Check> all() {
    return Stream.of(
            FormulaChecks.pair(),
            FormulaChecks.classics(),
            FormulaChecks.commonCause(),
            FormulaChecks.rulesOfThumb(),
            PlainChecks.laws(),
            PlainChecks.intervals(),
            PlainChecks.random(),
            PlainChecks.links(),
            FitChecks.records(),
            EngineChecks.drives(),
            EngineChecks.sets(),
            UnlikeChecks.unlike(),
            EngineChecks.shared(),
            EngineChecks.rare(),
            HiddenChecks.batches(),
            HiddenChecks.unreadable(),
            HiddenChecks.elerathPecht(),
            HabitChecks.habits())
        .flatMap(topic -> topic.checks().stream())
        .toList();
  }
}
