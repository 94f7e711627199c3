package lastcopy.cli.story;

import java.util.List;
import lastcopy.history.report.Happening.Kind;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.story.Moment;
import lastcopy.story.Story;

/** How a copy went, where no happening of the same instant says it. */
final class StoryOutage {

  private StoryOutage() {}

  /** A sentence that goes before that of the copy that is gone; empty if it was said. */
  static String how(Story story, int gone) {
    Moment moment = story.moments().get(gone);
    int index = moment.happening().copy();
    List<Moment> before = story.moments().subList(0, gone);
    boolean said =
        before.stream()
            .filter(m -> m.hours() == moment.hours())
            .anyMatch(m -> m.kind() == Kind.MISHAP || m.kind() == Kind.SPOIL_FOUND);
    if (said || index < 0) {
      return "";
    }
    String name = story.copies().get(index);
    if (unusable(before, index)) {
      return name + " is needed and found unusable. ";
    }
    Copy copy = story.copy(index);
    if (copy.driveSet().isEmpty()) {
      return "The service of " + name + " fails. ";
    }
    int partner = story.otherOfPair(moment.happening());
    if (partner >= 0) {
      return String.format(
          "Drive %d of %s fails while drive %d, the other of its pair, is down. ",
          moment.happening().drive() + 1, name, partner + 1);
    }
    return copy.driveSet().map(Medium.DriveSet::drives).orElse(1) == 1
        ? "The drive of " + name + " fails. "
        : "One drive too many of " + name + " is down. ";
  }

  /** Whether no copy goes at the instant of a mishap. */
  static boolean harmsNothing(Story story, int mishap) {
    double hours = story.moments().get(mishap).hours();
    return story.moments().subList(mishap, story.moments().size()).stream()
        .takeWhile(m -> m.hours() == hours)
        .noneMatch(m -> m.kind() == Kind.COPY_GONE || m.kind() == Kind.LOST);
  }

  /** Whether a copy had become unusable and nobody knew. */
  static boolean unusable(List<Moment> before, int copy) {
    return before.stream()
        .filter(m -> m.happening().copy() == copy)
        .filter(m -> m.kind() == Kind.SPOILT || m.kind() == Kind.COPY_GONE)
        .reduce((first, second) -> second)
        .filter(m -> m.kind() == Kind.SPOILT)
        .isPresent();
  }
}
