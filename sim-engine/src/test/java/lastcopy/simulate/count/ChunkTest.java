package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import lastcopy.history.History;
import lastcopy.history.report.Loss;
import lastcopy.law.Exponential;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chunk against its very histories one by one; a lone drive fails in half of them. */
class ChunkTest {

  private static final int COUNT = 200;

  private final Studio studio =
      Studios.of(
          8_760,
          Studios.shooting(1e12, 168, 1e10, 0),
          Studios.layout("a", CopyMaker.single("main", new Exponential(8_760 / Math.log(2)))),
          Studios.layout("b", CopyMaker.single("other", new Exponential(60))),
          Studios.layout("c", CopyMaker.single("third", new Exponential(8_760))));

  private History[] histories() {
    return studio.layouts().stream()
        .map(layout -> new History(studio, layout, 5))
        .toArray(History[]::new);
  }

  private BitSet lossy(int layout, long first) {
    History history = histories()[layout];
    BitSet lost = new BitSet();
    for (int i = 0; i < COUNT; i++) {
      int number = i;
      history.simulate(
          first + i,
          new LossLedger() {
            @Override
            public void lost(Loss loss) {
              lost.set(number);
            }
          });
    }
    return lost;
  }

  /** From the very first, whose turns are short, and from later ones. */
  @ParameterizedTest
  @ValueSource(longs = {0, 10, 70, 50_000})
  void aChunkIsItsHistories(long first) {
    boolean[] active = {true, false, true};
    Thresholds rows = Thresholds.of(studio);
    Chunk chunk = Chunk.simulate(histories(), active, rows, first, COUNT);
    assertThat(chunk.count()).isEqualTo(COUNT);
    assertThat(chunk.tallies()[1]).isNull();
    assertThat(chunk.lossy()[1]).isNull();
    for (int l : new int[] {0, 2}) {
      BitSet expected = lossy(l, first);
      assertThat(chunk.lossy()[l]).isEqualTo(expected);
      assertThat(chunk.tallies()[l].histories()).isEqualTo(COUNT);
      assertThat(chunk.tallies()[l].losses()).isEqualTo(expected.cardinality()).isPositive();
    }
  }

  /** Given up, it tells what all its layouts have, and forgets which lost anything beyond. */
  @Test
  void whatIsGivenUpHasWhatAllLayoutsHave() {
    History[] layouts = histories();
    AtomicInteger asked = new AtomicInteger();
    layouts[1].giveUpWhen(() -> asked.incrementAndGet() > 2);
    Chunk chunk =
        Chunk.simulate(
            layouts, new boolean[] {true, true, true}, Thresholds.of(studio), 5_000, COUNT);
    assertThat(chunk.count()).isLessThan(COUNT);
    for (int l = 0; l < 3; l++) {
      BitSet expected = lossy(l, 5_000);
      expected.clear(chunk.count(), COUNT);
      assertThat(chunk.lossy()[l]).as("layout %s", l).isEqualTo(expected);
    }
    assertThat(chunk.tallies()[0].histories()).isGreaterThan(chunk.count());
  }

  /** Of a chunk that begins at 19,900 the first hundred. */
  @Test
  void onlyTheVeryFirstHistoriesAreTimed() {
    boolean[] one = {true, false, false};
    Chunk chunk = Chunk.simulate(histories(), one, Thresholds.of(studio), 19_900, COUNT);
    assertThat(chunk.tallies()[0].time().exposure(8_760, .95).histories()).isEqualTo(100);
  }

  @Test
  void caveatsAddUp() {
    Caveats told = Caveats.NONE.note("one").note("two").doubted(List.of("why"));
    assertThat(told.notes()).containsExactly("one", "two");
    assertThat(told.doubts()).containsExactly("why");
  }
}
