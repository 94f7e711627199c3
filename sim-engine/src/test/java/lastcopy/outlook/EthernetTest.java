package lastcopy.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Ceilings by frame arithmetic (IEEE 802.3): 1,460 or 1,448 of 1,538 bytes. */
class EthernetTest {

  @Test
  void gigabitCarries118Point7MegabytesASecond() {
    assertThat(Ethernet.ceiling(1e9) / 1e6).isCloseTo(118.7, within(0.05));
    assertThat(Ethernet.ceilingWithTimestamps(1e9) / 1e6).isCloseTo(117.7, within(0.05));
  }

  /** 2.5 and 10 Gbit/s with timestamps: 294 and 1,177 MB/s. */
  @Test
  void fasterLines() {
    assertThat(Ethernet.ceilingWithTimestamps(2.5e9) / 1e6).isCloseTo(294, within(0.5));
    assertThat(Ethernet.ceilingWithTimestamps(1e10) / 1e6).isCloseTo(1177, within(0.5));
  }

  /**
   * Gigabit is quoted at up to 120 MB/s; copies are seen at 111 to 113: common practice, no source.
   */
  @Test
  void whatIsQuotedIsAboveTheCeilingAndWhatIsSeenIsBelow() {
    assertThat(Ethernet.linePromisedBy(120e6)).contains(1e9);
    assertThat(Ethernet.linePromisedBy(111e6)).isEmpty();
    assertThat(Ethernet.linePromisedBy(113e6)).isEmpty();
  }
}
