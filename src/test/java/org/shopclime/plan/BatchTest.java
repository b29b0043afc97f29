package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.balance.DrawnShop;
import org.shopclime.climate.Climates;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

class BatchTest {

  private static final Climates CLIMATES = Climates.load();

  private static final int MANY = 20;

  /** Notes what it is told, and cancels after some of it. */
  private static final class Notes implements Progress {

    private final List<Double> told = Collections.synchronizedList(new ArrayList<>());
    private final int most;

    Notes(int most) {
      this.most = most;
    }

    @Override
    public void at(String part, double done) {
      told.add(done);
    }

    @Override
    public boolean isCancelled() {
      return told.size() >= most;
    }
  }

  private static List<Shop> shops() {
    List<Shop> shops = new ArrayList<>();
    Examples.names().forEach(name -> shops.add(Examples.shop(name)));
    for (int lot = 0; lot < MANY; lot++) {
      shops.add(new DrawnShop(lot).shop());
    }
    return shops;
  }

  private static List<Object> bits(
      int threads, List<Shop> shops, Function<Shop, Object> answering) {
    return Bits.of(Batch.on(threads, "shops", Progress.silent()).run(shops, answering));
  }

  /** The number of threads, and a repetition, move no bit of any answer. */
  private static void sameWhateverTheThreads(List<Shop> shops, Function<Shop, Object> answering) {
    List<Object> alone = bits(1, shops, answering);
    assertThat(alone).hasSizeGreaterThan(100 * shops.size());
    for (int threads : new int[] {1, 2, 3, 8}) {
      assertThat(bits(threads, shops, answering).equals(alone)).as(threads + " threads").isTrue();
    }
  }

  @Test
  void hotDaysOfManyShops() {
    sameWhateverTheThreads(shops(), shop -> new Sizing(shop, CLIMATES).core());
  }

  @Test
  void yearsOfSomeShops() {
    sameWhateverTheThreads(
        shops().subList(3, 4),
        shop -> new Yearly(shop, CLIMATES).ofDayTypes(List.of(), Progress.silent()).orElseThrow());
  }

  /** A whole answer runs batches of its own: its changes, and what is not known. */
  @Test
  void wholeAnswersWithinABatch() {
    sameWhateverTheThreads(
        shops().subList(2, 4),
        shop -> new Sizing(shop, CLIMATES).answer(List.of(), Progress.silent()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void answersStandInTheOrderOfTheQuestions(int threads) {
    List<Integer> questions = IntStream.range(0, 200).boxed().toList();
    Notes notes = new Notes(Integer.MAX_VALUE);
    List<Batch.Outcome<Integer>> outcomes =
        Batch.on(threads, "squares", notes).run(questions, each -> each * each);
    assertThat(outcomes.stream().map(Batch.Outcome::orThrow).toList())
        .isEqualTo(questions.stream().map(each -> each * each).toList());
    assertThat(notes.told).isSorted().endsWith(1.0);
  }

  @Test
  void aFaultIsThatOfItsQuestionAlone() {
    List<Batch.Outcome<Integer>> outcomes =
        Batch.on(2, "parts", Progress.silent()).run(List.of(2, 0, 4), each -> 12 / each);
    assertThat(outcomes.get(0)).isEqualTo(new Batch.Answered<>(6));
    assertThat(outcomes.get(2)).isEqualTo(new Batch.Answered<>(3));
    assertThat(outcomes.get(1)).isInstanceOf(Batch.Failed.class);
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> outcomes.get(1).orThrow());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void aCancelledBatchLeavesTheRest(int threads) {
    AtomicInteger begun = new AtomicInteger();
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(
            () ->
                Batch.on(threads, "many", new Notes(10))
                    .run(IntStream.range(0, 1000).boxed().toList(), each -> begun.addAndGet(1)));
    assertThat(begun).hasValueLessThan(100);
  }

  @Test
  void nothingAskedAndNobodyToAnswer() {
    assertThat(Batch.on(3, "none", Progress.silent()).run(List.of(), each -> each)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Batch.on(0, "none", Progress.silent()))
        .withMessage("0 threads; takes one or more");
  }
}
