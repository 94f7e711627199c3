package lastcopy.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** Makes a {@link Layout} with the defaults of the scenario file. Mutable; made by one thread. */
public final class LayoutBuilder {

  private final String id;
  private final List<Copy> copies = new ArrayList<>();
  private String title;
  private OptionalDouble cardsKeepHours = OptionalDouble.empty();
  private Costs costs = Costs.NONE;

  LayoutBuilder(String id) {
    this.id = id;
    title = id;
  }

  /** The title for reports; otherwise the id. */
  public LayoutBuilder title(String forReports) {
    title = forReports;
    return this;
  }

  /** One more copy; the first is the working copy. */
  public LayoutBuilder copy(Copy one) {
    copies.add(Objects.requireNonNull(one, "copy"));
    return this;
  }

  /** Camera cards hold a shoot so long after its offload, in hours above 0. */
  public LayoutBuilder cardsKeep(double hours) {
    cardsKeepHours = OptionalDouble.of(hours);
    return this;
  }

  /** Whatever else it takes, apart from its copies. */
  public LayoutBuilder costs(Costs others) {
    costs = Objects.requireNonNull(others, "costs");
    return this;
  }

  /**
   * The layout.
   *
   * @throws IllegalArgumentException if there is no copy, ids repeat, a feed leads nowhere, or a
   *     box stands in two places
   */
  public Layout build() {
    return new Layout(id, title, copies, cardsKeepHours, costs);
  }
}
