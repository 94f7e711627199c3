package lastcopy.history.event.feed;

import java.util.Arrays;
import lastcopy.footage.Positions;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.Flow;
import lastcopy.history.state.HistoryState;
import lastcopy.history.state.Holdings;

/** Writes down a history without luck, which becomes the undisturbed course. */
public final class CourseRecorder implements Ledger {

  private final HistoryState state;
  private final RecordedCourse course;
  private double bareHours;

  /** Nothing is written down yet; copies hold what they do at the start. */
  public CourseRecorder(HistoryState state) {
    this.state = state;
    double[] atStart = Arrays.stream(state.copies()).mapToDouble(c -> c.held().bytes()).toArray();
    course = new RecordedCourse(Links.areSpecial(state), atStart);
  }

  /** How things stand after an instant. */
  public void instantHasPassed() {
    Holdings holdings = state.holdings();
    holdings.bringAllTo(state.now());
    int e = course.append(state.now(), bareHours, state.bareBytes(), holdings.lowestBare());
    for (CopyState copy : state.copies()) {
      Positions held = copy.held();
      // A shelf may have a gap where footage aged out before a run had carried it.
      double carried = Math.max(holdings.aged(), held.isEmpty() ? 0 : held.to(held.size() - 1));
      if (copy.flow().isGoing()) {
        Positions flow = copy.flow().positions();
        double to = flow.isEmpty() ? carried : flow.to(flow.size() - 1);
        course.set(e, copy.index(), copy.flow().base(), to, copy.flow().start());
      } else {
        course.set(e, copy.index(), carried, 0, 0);
      }
      if (course.isLinked()) {
        writeLink(e, copy);
      }
    }
  }

  private void writeLink(int entry, CopyState copy) {
    Flow flow = copy.flow();
    if (flow.isGoing()) {
      double end = state.clock().of(state.timers().runEnd(copy.index()));
      double until = flow.isByHand() ? flow.arrives() : end;
      course.setRate(entry, copy.index(), flow.since(), flow.perHour(), until);
    }
    if (!copy.feed().isFirstFill()) {
      course.hasFirstFill(copy.index(), state.now());
    }
  }

  /** The course, once the history has come to the horizon. */
  public RecordedCourse finished() {
    course.finish();
    return course;
  }

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double mostBare) {
    bareHours += bare;
  }

  @Override
  public void lost(Loss loss) {}

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {}

  @Override
  public boolean wantsTime() {
    return true;
  }
}
