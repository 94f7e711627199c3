package lastcopy.fit;

import java.util.List;
import lastcopy.number.Elementary;

/**
 * A hazard that is constant within each of some stretches of age; the last goes on for good.
 *
 * @param pieces by age, the first from 0 on; only those that any record reaches
 * @param logLikelihood of the records
 */
public record PiecewiseFit(List<Piece> pieces, double logLikelihood) implements FittedLaw {

  /** Copies the list. */
  public PiecewiseFit {
    pieces = List.copyOf(pieces);
  }

  /** Each piece in which anything was at risk has one. */
  @Override
  public int parameters() {
    return (int) pieces.stream().filter(piece -> piece.timeAtRisk() > 0).count();
  }

  @Override
  public double survival(double age) {
    double hazard = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      double to = i == pieces.size() - 1 ? age : Math.min(age, piece.to());
      hazard += piece.hazard().value() * Math.max(0, to - piece.from());
    }
    return Elementary.exp(-hazard);
  }
}
