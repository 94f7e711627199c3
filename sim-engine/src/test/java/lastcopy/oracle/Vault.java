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
  record Version(Blunder blunder, double until, Stretches footage) {

    Version without(Stretches some) {
      return new Version(blunder, until, footage.minus(some));
    }
  }

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

  /** A drive and those that hold what it holds: of pairs itself and its partner, else all. */
  List<Disk> mates(Disk disk) {
    if (set().filter(s -> s.arrangement() == Arrangement.PAIRS).isEmpty()) {
      return disks;
    }
    int i = disks.indexOf(disk);
    int partner = i % 2 == 0 ? i + 1 : i - 1;
    return List.of(disk, disks.get(partner));
  }

  int downAmong(List<Disk> some) {
    return (int) some.stream().filter(d -> !d.whole).count();
  }

  /** Whether nothing stands between an unreadable spot on a drive and a loss. */
  boolean isLast(Disk disk) {
    return isShelf() || downAmong(mates(disk)) >= survives();
  }

  /** Whether nothing stands between some unreadable spot and a loss. */
  boolean hasNoRedundancy() {
    return disks.isEmpty() || disks.stream().anyMatch(this::isLast);
  }

  /** Of what it holds, the share of which that is so: each pair holds as much as any other. */
  double bareShare() {
    return disks.stream().mapToDouble(d -> isLast(d) ? 1 : 0).average().orElse(1);
  }

  boolean inReach() {
    return rotated ? visiting : copy.reach() == Copy.Reach.ONLINE;
  }

  /** The positions of drive j of a shelf. */
  Stretches range(int j) {
    double from = roomOf(j);
    return Stretches.of(from, from + set().orElseThrow().model(j).sizeBytes());
  }

  /** What the first so many drives of a shelf hold. */
  double roomOf(int drives) {
    double room = 0;
    for (int j = 0; j < drives; j++) {
      room += set().orElseThrow().model(j).sizeBytes();
    }
    return room;
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
