package lastcopy.history.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lastcopy.scenario.DailyHours;
import org.junit.jupiter.api.Test;

/** When a link may be used, by hand. */
class FeedLinkTest {

  /** Open from 1 to 5 each day: 6 h of work take 4 h of the first day and 2 of the second. */
  @Test
  void aLinkThatOpensAtNightTakesTwoNights() {
    FeedLink nightly =
        new FeedLink(Optional.of(new DailyHours(1, 5)), FeedLink.NOT_SHARED, Optional.empty());
    assertThat(nightly.end(0, 6)).isEqualTo(24 + 1 + 2);
    assertThat(nightly.isOpen(0)).isFalse();
    assertThat(nightly.isOpen(25)).isTrue();
    assertThat(nightly.changeAfter(2)).isEqualTo(5);
    assertThat(nightly.isPlain()).isFalse();
    FeedLink shared = new FeedLink(Optional.empty(), 0, Optional.empty());
    assertThat(shared.end(3, 6)).isEqualTo(9);
    assertThat(shared.isOpen(0)).isTrue();
    assertThat(shared.changeAfter(0)).isInfinite();
    assertThat(shared.isPlain()).isFalse();
    assertThat(new FeedLink(Optional.empty(), FeedLink.NOT_SHARED, Optional.empty()).isPlain())
        .isTrue();
  }
}
