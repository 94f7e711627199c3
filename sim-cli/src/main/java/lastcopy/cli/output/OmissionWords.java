package lastcopy.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Omission.Kind;

/** Says what is not counted because the scenario says nothing about it. */
public final class OmissionWords {

  private static final String OWN_PLACE = "copy:";

  private OmissionWords() {}

  /** Whether so much is left out that it is to be read before any figure. */
  public static boolean comeFirst(List<Omission> omissions) {
    List<Kind> kinds = omissions.stream().map(Omission::kind).toList();
    return kinds.contains(Kind.PLACE_MISHAPS)
        || (kinds.contains(Kind.DELETION) && kinds.contains(Kind.MALWARE));
  }

  /** One paragraph, the worst first; empty if nothing is left out. */
  public static Optional<String> paragraph(List<Omission> omissions, int layouts) {
    if (omissions.isEmpty()) {
      return Optional.empty();
    }
    String all = omissions.stream().map(OmissionWords::title).collect(Collectors.joining("; "));
    String rank = layouts > 1 ? ", and layouts may rank otherwise" : "";
    String each = omissions.size() > 1 ? "Each of these" : "It";
    return Optional.of(
        "Not counted, since the file says nothing about it: "
            + all
            + ". "
            + each
            + " would raise the chance of loss"
            + rank
            + ".");
  }

  /** What is left out, as part of a sentence. */
  static String title(Omission omission) {
    String copies = inBrackets(omission);
    return switch (omission.kind()) {
      case PLACE_MISHAPS -> "mishaps of any place (fire, theft, water)";
      case DELETION -> "deletion by mistake";
      case MALWARE -> "malware";
      case DELETION_SEEN_AT_ONCE -> "the time until a deletion is noticed";
      case MALWARE_SEEN_AT_ONCE -> "the time until malware is noticed";
      case MISHAPS_OF_SOME_PLACES -> "mishaps of some places" + copies;
      case FAILURES_SEEN_AT_ONCE -> "the time until a failure is noticed" + copies;
      case REPLACED_AT_ONCE -> "the time until what failed is replaced" + copies;
      case SPOILS -> "copies that turn out unusable when they are needed" + copies;
      case READ_ERRORS -> "bits that cannot be read" + copies;
      case BATCH -> "drives of one batch that fail together";
    };
  }

  /**
   * What the figures of a layout take for granted, since the file does not say how long it takes;
   * each part of a sentence.
   *
   * @param omissions of a studio with that layout alone
   */
  public static List<String> assumptions(List<Omission> omissions) {
    Map<Kind, String> copies =
        omissions.stream().collect(Collectors.toMap(Omission::kind, OmissionWords::inBrackets));
    List<String> assumed = new ArrayList<>();
    if (copies.containsKey(Kind.DELETION_SEEN_AT_ONCE)) {
      assumed.add("a deletion is seen at once");
    }
    if (copies.containsKey(Kind.MALWARE_SEEN_AT_ONCE)) {
      assumed.add("malware is seen at once");
    }
    Optional<String> seen = Optional.ofNullable(copies.get(Kind.FAILURES_SEEN_AT_ONCE));
    Optional<String> replaced = Optional.ofNullable(copies.get(Kind.REPLACED_AT_ONCE));
    if (seen.isPresent() && seen.equals(replaced)) {
      assumed.add("failures are seen and replaced at once" + seen.get());
    } else {
      seen.ifPresent(where -> assumed.add("failures are seen at once" + where));
      replaced.ifPresent(where -> assumed.add("what failed is replaced at once" + where));
    }
    return assumed;
  }

  private static String inBrackets(Omission omission) {
    String names =
        omission.where().stream().map(OmissionWords::name).collect(Collectors.joining(", "));
    return names.isEmpty() ? "" : " (" + names + ")";
  }

  /** A copy, or a place; the place of a copy that names none has no name to be known by. */
  private static String name(String where) {
    return where.startsWith(OWN_PLACE) ? "that of " + where.substring(OWN_PLACE.length()) : where;
  }
}
