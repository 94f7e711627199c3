package lastcopy.cli.option;

import picocli.CommandLine.Option;

/** How surely intervals hold. */
public final class ConfidenceOption {

  @Option(
      names = "--confidence",
      paramLabel = "PERCENT",
      defaultValue = "95%",
      converter = Converters.Confidence.class,
      description = "Confidence of every interval (default: 95%%).")
  private double confidence;

  /** In (0, 1). */
  public double value() {
    return confidence;
  }
}
