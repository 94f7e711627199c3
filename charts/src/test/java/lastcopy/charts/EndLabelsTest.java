package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the names of lines stand: by arithmetic. */
class EndLabelsTest {

  private static final double HEIGHT = 420;
  private static final double LINE = 16;

  static Stream<List<Double>> heights() {
    return Stream.of(
        List.of(0.5),
        List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
        List.of(1.0, 1.0, 1.0, 1.0, 1.0),
        List.of(0.1, 0.9, 0.92, 0.91, 0.3),
        List.of(0.99, 0.01, 0.5, 0.51, 0.52, 0.98, 0.97, 1.0));
  }

  /** Red if a label is not pushed away from its neighbours, or off the picture. */
  @ParameterizedTest
  @MethodSource("heights")
  void noneStandsUponAnotherOrOffThePlot(List<Double> heights) {
    List<EndLabels.Label> labels = new ArrayList<>();
    for (double height : heights) {
      labels.add(new EndLabels.Label(labels.size(), height, List.of("one", "two")));
    }
    double free = 0;
    double before = 0;
    for (EndLabels.Placed placed : EndLabels.placed(labels, HEIGHT, LINE)) {
      assertThat(placed.top()).isGreaterThanOrEqualTo(free - 1e-9);
      assertThat(placed.label().height()).isGreaterThanOrEqualTo(before);
      free = placed.top() + 2 * LINE;
      before = placed.label().height();
    }
    assertThat(free).isLessThanOrEqualTo(HEIGHT + LINE + 1e-9);
  }

  @Test
  void aLabelAloneStandsAtTheEndOfItsLine() {
    EndLabels.Label label = new EndLabels.Label(0, 0.4, List.of("one", "two"));
    assertThat(EndLabels.placed(List.of(label), HEIGHT, LINE).get(0).top())
        .isCloseTo(0.4 * HEIGHT - LINE, within(1e-9));
  }

  @Test
  void wordsAreBrokenAtSpacesOnly() {
    assertThat(EndLabels.broken("Two drives mirrored in one box"))
        .containsExactly("Two drives mirrored in one", "box");
    assertThat(EndLabels.broken("x".repeat(40))).containsExactly("x".repeat(40));
  }
}
