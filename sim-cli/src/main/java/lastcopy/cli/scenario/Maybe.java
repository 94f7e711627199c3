package lastcopy.cli.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.snakeyaml.engine.v2.nodes.Node;

/** Small helpers for keys that may be left out. */
final class Maybe {
  private Maybe() {}

  /** The number of a node that may be missing. */
  static OptionalDouble number(Optional<Node> node, ToDoubleFunction<Node> read) {
    return node.isPresent()
        ? OptionalDouble.of(read.applyAsDouble(node.get()))
        : OptionalDouble.empty();
  }

  /** A node that may say that something never happens, as if it had been left out. */
  static Optional<Node> unlessNever(Optional<Node> node) {
    return node.filter(n -> !Nodes.text(n).equals("never"));
  }

  /** Notes the format's default of a key that was left out. */
  static void noteDefault(Section section, String key, String value) {
    if (!section.has(key)) {
      section.defaulted(key, value);
    }
  }
}
