package lastcopy.story;

import java.util.ArrayList;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;

/** The copies of a layout as histories count them: each turn of a rotation is one. */
final class Turns {

  private Turns() {}

  static List<Copy> of(Layout layout) {
    List<Copy> all = new ArrayList<>();
    for (Copy copy : layout.copies()) {
      for (int j = 0; j < copy.rotation().map(Copy.Rotation::turns).orElse(1); j++) {
        all.add(copy);
      }
    }
    return all;
  }
}
