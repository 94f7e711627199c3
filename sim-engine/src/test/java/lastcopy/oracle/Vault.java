package lastcopy.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/** The state of one copy. */
final class Vault {

  /** Footage that was deleted at the source and is still held, until then. */
  record Version(Blunder blunder, Stretches footage) {}

  final Copy copy;
  final boolean rotated;
  final List<Disk> disks = new ArrayList<>();
  final List<Version> versions = new ArrayList<>();

  /** What it holds as the present state; while it is spoilt, what everybody believes. */
  Stretches live = Stretches.NONE;

  boolean gone;
  boolean spoilt;
  boolean visiting;

  /** Changes when it goes, so that what was planned for it before does nothing. */
  int lives;

  int spells;
  int visits;

  Vault(Copy copy, boolean rotated) {
    this.copy = copy;
    this.rotated = rotated;
  }

  Optional<Medium.DriveSet> set() {
    return copy.driveSet();
  }

  boolean isShelf() {
    return set().filter(s -> s.arrangement() == Arrangement.SHELF).isPresent();
  }

  int survives() {
    return set().map(Medium.DriveSet::survives).orElse(0);
  }

  int down() {
    return (int) disks.stream().filter(d -> !d.whole).count();
  }

  /** Whether nothing stands between an unreadable spot and a loss. */
  boolean hasNoRedundancy() {
    return isShelf() || down() >= survives();
  }

  boolean inReach() {
    return rotated ? visiting : copy.reach() == Copy.Reach.ONLINE;
  }

  /** The positions of drive j of a shelf. */
  Stretches range(int j) {
    double size = set().orElseThrow().model().sizeBytes();
    return Stretches.of(j * size, (j + 1) * size);
  }

  /** Where it has hardware that runs. */
  Stretches room() {
    if (gone) {
      return Stretches.NONE;
    }
    if (!isShelf()) {
      return Stretches.of(0, Double.MAX_VALUE);
    }
    Stretches room = Stretches.NONE;
    for (int j = 0; j < disks.size(); j++) {
      if (disks.get(j).whole) {
        room = room.plus(range(j));
      }
    }
    return room;
  }

  /** What can be read as the present state. */
  Stretches usable() {
    return gone || spoilt ? Stretches.NONE : live;
  }

  /** What it holds, blocks deleted elsewhere included. */
  Stretches holds() {
    Stretches held = usable();
    if (!gone && !spoilt) {
      for (Version version : versions) {
        held = held.plus(version.footage());
      }
    }
    return held;
  }
}
