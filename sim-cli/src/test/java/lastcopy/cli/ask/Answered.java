package lastcopy.cli.ask;

import java.util.Optional;
import java.util.stream.Stream;

/** Answers of an owner, most of them as suggested. */
final class Answered {

  private Answered() {}

  /** All as suggested, but for some: an id and its answer in turn, as a file has it. */
  static Answers by(String... own) {
    Answers answers = Answers.NONE;
    for (OwnerQuestion question : QuestionTable.all()) {
      if (question.asked().test(answers)) {
        String preset = question.preset().apply(answers);
        Optional<String> given = given(question.id(), own);
        Answers.Given answer = new Answers.Given(given.orElse(preset), given.isPresent());
        answers = answers.with(question.id(), answer);
      }
    }
    return answers;
  }

  private static Optional<String> given(String id, String... own) {
    return Stream.iterate(0, i -> i < own.length, i -> i + 2)
        .filter(i -> own[i].equals(id))
        .map(i -> own[i + 1])
        .findFirst();
  }
}
