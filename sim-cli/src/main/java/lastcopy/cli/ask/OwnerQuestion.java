package lastcopy.cli.ask;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Something that an owner knows.
 *
 * @param id of the answer
 * @param words the question
 * @param reply what kind of answer it has
 * @param preset what is suggested after the answers before it
 * @param reason why so, a sentence
 * @param asked whether it is asked after the answers before it
 * @param check what is wrong with an answer beside those before it, in a sentence
 */
record OwnerQuestion(
    String id,
    String words,
    Reply reply,
    Function<Answers, String> preset,
    Function<Answers, String> reason,
    Predicate<Answers> asked,
    BiFunction<Answers, String, Optional<String>> check) {

  /** Typed instead of an answer, it goes back to the question before. */
  static final String BACK = "<";

  /** One that is always asked and suggests the same whatever was answered. */
  static OwnerQuestion of(String id, String words, Reply reply, String preset, String reason) {
    return new OwnerQuestion(
        id,
        words,
        reply,
        before -> preset,
        before -> reason,
        before -> true,
        (before, value) -> Optional.empty());
  }

  /** The same with a suggestion that follows from the answers before it. */
  OwnerQuestion suggesting(Function<Answers, String> other, Function<Answers, String> because) {
    return new OwnerQuestion(id, words, reply, other, because, asked, check);
  }

  OwnerQuestion onlyIf(Predicate<Answers> needed) {
    return new OwnerQuestion(id, words, reply, preset, reason, needed, check);
  }

  OwnerQuestion checked(BiFunction<Answers, String, Optional<String>> by) {
    return new OwnerQuestion(id, words, reply, preset, reason, asked, by);
  }

  /** Reads an answer, and holds it against those before it. */
  Parsed read(Answers before, String text) {
    Parsed parsed = reply.read(text);
    return parsed
        .value()
        .flatMap(value -> check.apply(before, value))
        .map(Parsed::not)
        .orElse(parsed);
  }
}
