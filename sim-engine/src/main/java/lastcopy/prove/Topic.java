package lastcopy.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;

/** Collects the checks of one topic; the source stands for all checks that follow it. */
final class Topic {

  /** Histories of an ordinary simulated line: at p = 0.3 an error of 5 % shows surely. */
  private static final long HISTORIES = 50_000;

  private static final long FEW_HISTORIES = 10_000;

  private final String name;
  private final List<Check> checks = new ArrayList<>();
  private String source = "";

  Topic(String name) {
    this.name = name;
  }

  Topic from(String where) {
    source = where;
    return this;
  }

  /** A closed form against a printed value. */
  Topic printed(String what, String value, DoubleSupplier ours) {
    return add(what, () -> Reference.published(value), new Figure.Computed(ours));
  }

  /** A closed form against another one. */
  Topic exact(String what, DoubleSupplier other, DoubleSupplier ours) {
    return add(what, () -> Reference.exact(other.getAsDouble()), new Figure.Computed(ours));
  }

  /** An exact value against a printed approximation of it, or one that is computed here. */
  Topic approximation(String what, Supplier<Reference> reference, DoubleSupplier ours) {
    return add(what, reference, new Figure.Computed(ours));
  }

  /** The engine's chance of any loss against a reference. */
  Topic engine(String what, Supplier<Reference> reference, Supplier<Studio> studio) {
    return add(
        what,
        reference,
        new Figure.Simulated(studio, LayoutResult::anyLoss, true, HISTORIES, Method.PLAIN));
  }

  /** The engine's chance of any loss against a closed form or a chain. */
  Topic engineExact(String what, DoubleSupplier exact, Supplier<Studio> studio) {
    return engine(what, () -> Reference.exact(exact.getAsDouble()), studio);
  }

  /** The engine's chance of a loss too rare for plain histories, from biased ones. */
  Topic rare(String what, Supplier<Reference> reference, Supplier<Studio> studio) {
    return add(
        what,
        reference,
        new Figure.Simulated(studio, LayoutResult::anyLoss, true, HISTORIES, Method.RARE));
  }

  /** Any figure of the engine, from fewer histories since most of them have much to tell. */
  Topic engine(
      String what,
      Supplier<Reference> reference,
      Supplier<Studio> studio,
      Function<LayoutResult, Estimate> figure) {
    return add(
        what, reference, new Figure.Simulated(studio, figure, false, FEW_HISTORIES, Method.PLAIN));
  }

  List<Check> checks() {
    return List.copyOf(checks);
  }

  private Topic add(String what, Supplier<Reference> reference, Figure figure) {
    checks.add(new Check(name, source, what, reference, figure));
    return this;
  }
}
