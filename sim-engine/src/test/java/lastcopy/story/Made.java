package lastcopy.story;

import java.util.ArrayList;
import java.util.List;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** A history made up by hand: moments that a test writes down one after another. */
public final class Made {

  private final List<Moment> moments = new ArrayList<>();
  private final int copies;
  private double bytes;
  private double shot;

  public Made(int copies) {
    this.copies = copies;
  }

  /** Something happens to a copy, after which each copy holds so much; nothing if it is gone. */
  Made at(double hours, Kind kind, int copy, double until, double... held) {
    return at(hours, kind, copy, until, new int[copies], held);
  }

  Made at(double hours, Kind kind, int copy, double until, int[] down, double... held) {
    boolean[] gone = new boolean[copies];
    double most = 0;
    double others = 0;
    for (int c = 0; c < copies; c++) {
      gone[c] = held[c] == 0;
      others = Math.max(others, Math.min(most, held[c]));
      most = Math.max(most, held[c]);
    }
    shot = Math.max(shot, most);
    Happening it = new Happening(kind, hours, copy, copy < 0 ? -1 : 0, bytes, until, "");
    moments.add(new Moment(it, new Snapshot(shot, 0, held, gone, down, most - others, 1)));
    return this;
  }

  /** How much it is about, from now on. */
  Made bytes(double amount) {
    bytes = amount;
    return this;
  }

  public List<Moment> moments() {
    return moments;
  }

  public Story story(Studio studio, Loss... losses) {
    Layout layout = studio.layouts().get(0);
    List<String> names = layout.copies().stream().map(copy -> copy.id()).toList();
    return new Story(studio, layout, names, 1, 0, moments, List.of(losses));
  }
}
