package lastcopy.cli.scenario.value;

import java.util.List;

/** The sections of a scenario file and the keys that each may have, in the format's order. */
public enum Kind {
  SCENARIO(
      "a scenario",
      "lastcopy",
      "studio",
      "years",
      "currency",
      "energy",
      "work",
      "footage",
      "places",
      "boxes",
      "uplinks",
      "desk",
      "drives",
      "layouts"),
  WORK("work", "price", "repair", "visit", "look", "trial"),
  COSTS("costs", "once", "per_year", "per_month"),
  FOOTAGE("footage", "on_hand", "shoots", "ingest", "growth", "keep_for", "clip", "worth"),
  SHOOTS("shoots", "every", "per_year", "size", "spacing"),
  PLACE("a place", "mishaps"),
  MISHAP("a mishap", "rate", "takes"),
  BOX("a box", "rate", "price", "power", "speed"),
  UPLINK("an uplink", "speed", "price"),
  DESK("the desk", "typical", "deletion", "malware"),
  DELETION("deletion", "rate", "size", "noticed"),
  MALWARE("malware", "rate", "noticed"),
  DRIVE(
      "a drive model",
      "size",
      "price",
      "owned",
      "power",
      "speed",
      "fails",
      "age",
      "bought_at",
      "fails_off"),
  LAYOUT("a layout", "title", "copies", "cards", "costs"),
  CARDS("cards", "keep"),
  COPY(
      "a copy",
      "place",
      "box",
      "drives",
      "service",
      "arrangement",
      "batch",
      "noticed",
      "wait",
      "rebuild",
      "rebuild_reads",
      "daily_work_takes",
      "replace_at",
      "latent_defects",
      "scrub",
      "strain",
      "spoils",
      "gone_noticed",
      "read_errors",
      "feed",
      "restores_at",
      "keeps_deleted",
      "reach",
      "starts",
      "rotation",
      "optional",
      "costs"),
  CHOICE("a choice", "one_of"),
  ALTERNATIVE("an alternative", "use", "costs"),
  SERVICE("a service", "loses", "price", "retrieval", "restores_in"),
  BATCH("a batch", "name", "spread"),
  SPOILS("spoils", "rate", "tried_every"),
  FEED(
      "a feed",
      "from",
      "every",
      "at",
      "continuous",
      "link",
      "between",
      "carried",
      "stops",
      "checked_every",
      "visits"),
  CARRIED("carried", "takes", "rate"),
  ROTATION("rotation", "drives", "every"),
  LAW("a law", "mean", "fixed", "weibull", "uniform", "by_age", "sum", "times", "law"),
  LOOKS(
      "a law or looks",
      "checked_every",
      "mean",
      "fixed",
      "weibull",
      "uniform",
      "by_age",
      "sum",
      "times",
      "law"),
  LIFE(
      "a life", "typical", "level", "mean", "fixed", "weibull", "uniform", "by_age", "sum", "times",
      "law"),
  WEIBULL("weibull", "shape", "scale", "location");

  private final String phrase;

  // List.of cannot change.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<String> keys;

  Kind(String phrase, String... keys) {
    this.phrase = phrase;
    this.keys = List.of(keys);
  }

  /** How a message calls it. */
  public String phrase() {
    return phrase;
  }

  /** The keys that it may have. */
  public List<String> keys() {
    return keys;
  }
}
