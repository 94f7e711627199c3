package lastcopy.cli.story;

import java.util.List;
import java.util.Locale;
import lastcopy.history.report.Snapshot;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/** What a copy holds over time, as the points of a shape. */
final class LaneShape {

  static final int WIDTH = 300;
  static final int HEIGHT = 30;

  /** A copy that lacks less than this part holds everything. */
  private static final double ALL = 1 - 1e-6;

  private final Story story;
  private final int copy;
  private final double most;
  private final StringBuilder points = new StringBuilder();

  private LaneShape(Story story, int copy) {
    this.story = story;
    this.copy = copy;
    this.most = story.moments().stream().mapToDouble(m -> m.scene().shotBytes()).max().orElse(1);
  }

  /**
   * Points of a polygon: full height is all footage ever shot by the end. Between happenings lines
   * are straight.
   */
  static String of(Story story, int copy) {
    LaneShape lane = new LaneShape(story, copy);
    lane.draw();
    return lane.points.toString().strip();
  }

  private void draw() {
    List<Moment> moments = story.moments();
    point(0, 0);
    for (int i = 0; i < moments.size(); i++) {
      if (i > 0) {
        point(moments.get(i).hours(), before(moments.get(i - 1).scene(), moments.get(i).scene()));
      }
      point(moments.get(i).hours(), held(moments.get(i).scene()));
    }
    point(story.studio().horizonHours(), 0);
  }

  /** Just before a happening: a copy that had everything had followed what was shot. */
  private double before(Snapshot last, Snapshot next) {
    boolean whole = held(last) > 0 && held(last) >= (last.shotBytes() - last.lostBytes()) * ALL;
    double followed = whole ? held(last) + next.shotBytes() - last.shotBytes() : held(last);
    return Math.max(followed, Math.min(held(next), next.shotBytes()));
  }

  private double held(Snapshot scene) {
    return scene.heldBytes()[copy];
  }

  private void point(double hours, double bytes) {
    double x = WIDTH * Math.min(1, hours / story.studio().horizonHours());
    double y = HEIGHT * (1 - Math.min(1, most > 0 ? bytes / most : 0));
    points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y));
  }
}
