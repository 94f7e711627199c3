package lastcopy.exact;

/** Mean times to data loss as the literature gives them; all times in hours. */
public final class ClassicFormulas {

  private ClassicFormulas() {}

  /**
   * n units of which one failure is survived: (μ + (2n − 1)λ)/(n(n − 1)λ²) (Greenan, Plank, Wylie,
   * HotStorage 2010). Exact for constant rates.
   *
   * @param units n, at least 2
   * @param failsPerHour λ, above 0
   * @param repairsPerHour μ, at least 0
   */
  public static double oneSurvived(int units, double failsPerHour, double repairsPerHour) {
    Parameters.that(units >= 2, "units must be at least 2", units);
    Parameters.above(failsPerHour, "failure rate");
    Parameters.atLeastZero(repairsPerHour, "repair rate");
    return (repairsPerHour + (2.0 * units - 1) * failsPerHour)
        / ((double) units * (units - 1) * failsPerHour * failsPerHour);
  }

  /**
   * Many groups with check disks: MTTF²/((D + C·nG)(G + C − 1)·MTTR) (Patterson, Gibson, Katz,
   * SIGMOD 1988). An approximation for repairs short against lives.
   *
   * @param meanLife MTTF of a disk, above 0
   * @param meanRepair MTTR, above 0
   * @param dataDisks D, a multiple of the group's, above 0
   * @param groupData G, data disks of a group, above 0
   * @param groupChecks C, check disks of a group, above 0
   */
  public static double patterson(
      double meanLife, double meanRepair, int dataDisks, int groupData, int groupChecks) {
    Parameters.above(meanLife, "mean life");
    Parameters.above(meanRepair, "mean repair");
    Parameters.above(groupChecks, "check disks of a group");
    Parameters.that(
        groupData > 0 && dataDisks > 0 && dataDisks % groupData == 0,
        "data disks must fill their groups",
        dataDisks);
    double disks = dataDisks + (double) groupChecks * dataDisks / groupData;
    return meanLife / disks * meanLife / (groupData + groupChecks - 1) / meanRepair;
  }

  /**
   * Parity groups: MTTF²/(N(G − 1)·MTTR) (Chen, Lee, Gibson, Katz, Patterson, ACM Computing Surveys
   * 26(2), 1994).
   *
   * @param meanLife MTTF of a disk, above 0
   * @param meanRepair MTTR, above 0
   * @param disks N, all disks, above 0
   * @param group G, the disks of a parity group with its parity, at least 2
   */
  public static double chen(double meanLife, double meanRepair, int disks, int group) {
    Parameters.above(meanLife, "mean life");
    Parameters.above(meanRepair, "mean repair");
    Parameters.above(disks, "disks");
    Parameters.that(group >= 2, "a group needs at least 2 disks", group);
    return meanLife / disks * meanLife / (group - 1) / meanRepair;
  }

  /**
   * A mirror whose faults stay unseen until a look, ML²/MDL (Baker et al., EuroSys 2006): an
   * approximation for detection short against lives, which no simulation need agree with; {@link
   * LatentPair} is exact.
   *
   * @param meanToLatent ML, the mean time to a latent fault, above 0
   * @param meanDetection MDL, the mean time until one is found, above 0
   */
  public static double bakerScrubbed(double meanToLatent, double meanDetection) {
    Parameters.above(meanToLatent, "mean time to a latent fault");
    Parameters.above(meanDetection, "mean time to detection");
    return meanToLatent / meanDetection * meanToLatent;
  }
}
