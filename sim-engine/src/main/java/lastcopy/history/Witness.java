package lastcopy.history;

/** Told everything that happens in one history, in order; for stories, not for estimates. */
@FunctionalInterface
public interface Witness {

  /** Something happened; the scene is the one just after it. */
  void saw(Happening happening, Scene scene);
}
