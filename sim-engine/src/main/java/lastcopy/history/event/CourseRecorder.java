package lastcopy.history.event;

import java.util.Arrays;
import lastcopy.footage.Positions;
import lastcopy.history.plan.RecordedCourse;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.history.state.CopyState;
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
    course =
        new RecordedCourse(
            Arrays.stream(state.copies()).mapToDouble(c -> c.held().bytes()).toArray());
  }

  /** How things stand after an instant. */
  public void instantHasPassed() {
    Holdings holdings = state.holdings();
    holdings.bringAllTo(state.now());
    int e = course.append(state.now(), bareHours, state.bareBytes(), holdings.lowestBare());
    for (CopyState copy : state.copies()) {
      Positions held = copy.held();
      double carried = Math.max(holdings.aged(), held.isEmpty() ? 0 : held.to(0));
      if (copy.flow().isGoing()) {
        Positions flow = copy.flow().positions();
        double to = flow.isEmpty() ? carried : flow.to(flow.size() - 1);
        course.set(e, copy.index(), copy.flow().base(), to, copy.flow().start());
      } else {
        course.set(e, copy.index(), carried, 0, 0);
      }
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
