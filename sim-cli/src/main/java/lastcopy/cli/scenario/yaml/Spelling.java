package lastcopy.cli.scenario.yaml;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that was probably meant. */
public final class Spelling {
  private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();
  private static final int FURTHEST = 2;

  /** Nothing is meant by a longer word. */
  private static final int LONGEST = 60;

  /** Up to so many words a message lists all of them. */
  private static final int FEW = 6;

  private Spelling() {}

  /** The known word nearest to one that is not known, or an empty string if none is near. */
  public static String nearest(String word, Collection<String> known) {
    if (word.length() > LONGEST) {
      return "";
    }
    return known.stream()
        .filter(other -> distance(word, other) <= furthest(word))
        .min(Comparator.comparingInt(other -> distance(word, other)))
        .orElse("");
  }

  /** The known words in a message: all of a few, of many those most like the one not known. */
  public static String few(String word, List<String> known) {
    if (known.size() <= FEW) {
      return String.join(", ", known);
    }
    String start = word.substring(0, Math.min(LONGEST, word.length()));
    Comparator<String> likeness =
        Comparator.comparingDouble(other -> -LIKENESS.apply(lower(start), other));
    return known.stream().sorted(likeness).limit(FEW - 1).collect(Collectors.joining(", "))
        + " or one of "
        + (known.size() - FEW + 1)
        + " more (lastcopy inspect --schema lists them)";
  }

  /** Numbered or lettered names, such as shelf-1 and shelf-2, are meant to differ. */
  public static boolean sameSeries(String a, String b) {
    String end = "(\\d+|[-_ ][A-Za-z])$";
    return a.replaceFirst(end, "").equals(b.replaceFirst(end, ""));
  }

  private static int furthest(String word) {
    // In a short word two letters are too much of it.
    return Math.min(FURTHEST, Math.max(1, word.length() / 3));
  }

  private static int distance(String a, String b) {
    int distance = DISTANCE.apply(lower(a), lower(b));
    // Two letters in the wrong order are one slip.
    return distance == 2 && letters(a).equals(letters(b)) ? 1 : distance;
  }

  private static String letters(String word) {
    char[] letters = lower(word).toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT).replace('-', '_');
  }
}
