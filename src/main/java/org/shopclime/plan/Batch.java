package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Answers many alike questions, such as one about each of many shops, on several threads.
 *
 * <p>Each question is answered on its own, with nothing shared that can change, and the answers
 * stand in the order of the questions: they are the same to the last bit whatever the number of
 * threads. What answers a question may itself run a batch; it then shares the threads of the outer
 * one.
 */
public final class Batch {

  private final Optional<Integer> threads;
  private final Steps steps;
  private final String part;
  private final double from;
  private final double to;

  private Batch(Optional<Integer> threads, Steps steps, String part, double from, double to) {
    this.threads = threads;
    this.steps = steps;
    this.part = part;
    this.from = from;
    this.to = to;
  }

  /**
   * What became of one question.
   *
   * @param <A> answer
   */
  public sealed interface Outcome<A> {

    /**
     * The answer where there is one.
     *
     * @return answer
     * @throws RuntimeException what kept the question from being answered
     */
    A orThrow();
  }

  /**
   * A question that was answered.
   *
   * @param answer its answer
   * @param <A> answer
   */
  public record Answered<A>(A answer) implements Outcome<A> {

    @Override
    public A orThrow() {
      return answer;
    }
  }

  /**
   * A question that could not be answered; the others are answered all the same.
   *
   * @param fault what kept it from being answered, such as {@link org.shopclime.run.RoomTooHot}
   * @param <A> answer
   */
  public record Failed<A>(RuntimeException fault) implements Outcome<A> {

    @Override
    public A orThrow() {
      throw fault;
    }
  }

  /**
   * A batch on threads of its own.
   *
   * @param threads how many questions are answered at a time, 1 or more; usually the number of
   *     processors
   * @param part what is done, in a few words, for {@code progress}
   * @param progress told after every question; asked before and after each whether to stop
   * @return batch
   * @throws IllegalArgumentException if there are no threads
   */
  public static Batch on(int threads, String part, Progress progress) {
    if (threads < 1) {
      throw new IllegalArgumentException(threads + " threads; takes one or more");
    }
    return new Batch(Optional.of(threads), new Steps(progress), part, 0, 1);
  }

  /** A part of something longer: on the threads of the batch that this belongs to, or on all. */
  static Batch within(Steps steps, String part, double from, double to) {
    return new Batch(Optional.empty(), steps, part, from, to);
  }

  /**
   * Answers all questions.
   *
   * @param questions questions
   * @param answering answers one; is called from several threads at once
   * @param <Q> question
   * @param <A> answer
   * @return one outcome for each, in the order of the questions
   * @throws CancellationException if the progress is cancelled; questions not begun are then left
   */
  public <Q, A> List<Outcome<A>> run(
      List<Q> questions, Function<? super Q, ? extends A> answering) {
    AtomicInteger done = new AtomicInteger();
    List<ForkJoinTask<Outcome<A>>> tasks =
        questions.stream()
            .map(
                question ->
                    ForkJoinTask.adapt(
                        () -> {
                          steps.at(part, from);
                          Outcome<A> outcome = outcome(question, answering);
                          double share = (double) done.incrementAndGet() / questions.size();
                          steps.at(part, from + (to - from) * share);
                          return outcome;
                        }))
            .toList();
    threads.ifPresentOrElse(
        number -> runOn(new ForkJoinPool(number), tasks), () -> ForkJoinTask.invokeAll(tasks));
    return tasks.stream().map(ForkJoinTask::join).toList();
  }

  private static <A> void runOn(ForkJoinPool pool, List<ForkJoinTask<Outcome<A>>> tasks) {
    try {
      pool.invoke(ForkJoinTask.adapt(() -> ForkJoinTask.invokeAll(tasks)));
    } finally {
      pool.shutdownNow();
    }
  }

  private static <Q, A> Outcome<A> outcome(Q question, Function<? super Q, ? extends A> answering) {
    try {
      return new Answered<>(answering.apply(question));
    } catch (CancellationException stopped) {
      throw stopped;
    } catch (RuntimeException fault) {
      return new Failed<>(fault);
    }
  }
}
