package org.shopclime.form;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import javax.swing.SwingWorker;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.Progress;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;

/** Asks for answers off the event thread; the newest question takes the place of the older. */
final class Asking {

  /** What is told of an answer, all of it on the event thread. */
  interface Told {

    /** The shop was checked. */
    void checked(Shop shop, ShopCheck.Findings findings);

    /** The heart of the answer is there. */
    void quick(Shop shop, CoreAnswer core);

    /** The whole answer is there. */
    void whole(SizeAnswer answer);

    /** How far it is, 0 to 1; below 0: nobody knows. */
    void at(String part, double done);

    /** There will be no answer. */
    void stopped(String why);
  }

  /** Something to be told on the event thread. */
  private interface News {
    void tell(Told told);
  }

  private final Supplier<Answering> source;
  private final Told told;
  private Optional<Question> newest = Optional.empty();

  Asking(Supplier<Answering> source, Told told) {
    this.source = source;
    this.told = told;
  }

  void ask(Shop shop) {
    newest.ifPresent(question -> question.cancel(false));
    Question question = new Question(shop);
    newest = Optional.of(question);
    told.at("Reckoning", -1);
    question.execute();
  }

  /** Ends the newest question without an answer. */
  void cancel() {
    newest.ifPresent(question -> question.cancel(false));
    newest = Optional.empty();
  }

  private final class Question extends SwingWorker<Void, News> {

    private final Shop shop;

    Question(Shop shop) {
      this.shop = shop;
    }

    @Override
    protected Void doInBackground() {
      Answering answering = source.get();
      ShopCheck.Findings findings = answering.check(shop);
      publish(news -> news.checked(shop, findings));
      if (!findings.problems().isEmpty() || isCancelled()) {
        return null;
      }
      CoreAnswer core = answering.quick(shop);
      publish(news -> news.quick(shop, core));
      if (isCancelled()) {
        return null;
      }
      SizeAnswer answer =
          answering.whole(
              shop,
              findings.warnings(),
              new Progress() {
                @Override
                public void at(String part, double done) {
                  publish(news -> news.at("Reckoning: " + part, done));
                }

                @Override
                public boolean isCancelled() {
                  return Question.this.isCancelled();
                }
              });
      publish(news -> news.whole(answer));
      return null;
    }

    private boolean isNewest() {
      return !isCancelled() && newest.isPresent() && newest.get() == this;
    }

    @Override
    protected void process(List<News> chunks) {
      for (News news : chunks) {
        if (isNewest()) {
          news.tell(told);
        }
      }
    }

    @Override
    protected void done() {
      if (!isNewest()) {
        return;
      }
      try {
        get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (CancellationException e) {
        return;
      } catch (ExecutionException e) {
        if (!(e.getCause() instanceof CancellationException)) {
          told.stopped("This shop could not be reckoned: " + reason(e.getCause()));
        }
      }
    }

    private static String reason(Throwable cause) {
      return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
  }
}
