package lastcopy.cli.scenario.value;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lastcopy.cli.scenario.yaml.Nodes;
import org.snakeyaml.engine.v2.nodes.Node;

/** Small helpers for keys that may be left out. */
public final class Maybe {
  private Maybe() {}

  /** The number of a node that may be missing. */
  public static OptionalDouble number(Optional<Node> node, ToDoubleFunction<Node> read) {
    return node.isPresent()
        ? OptionalDouble.of(read.applyAsDouble(node.get()))
        : OptionalDouble.empty();
  }

  /** A node that may say that something never happens, as if it had been left out. */
  public static Optional<Node> unlessNever(Optional<Node> node) {
    return node.filter(n -> !Nodes.text(n).equals("never"));
  }

  /** Notes the format's default of a key that was left out. */
  public static void noteDefault(Section section, String key, String value) {
    if (!section.has(key)) {
      section.defaulted(key, value);
    }
  }
}
