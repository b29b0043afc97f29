package org.shopclime.form;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import javax.swing.SwingWorker;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceWatch;
import org.shopclime.shop.Shop;

/**
 * Asks where the compressor could stand, off the event thread. That takes seconds, so it is asked
 * only while the page is seen, after the answer above it; the newest question takes the place of
 * the older.
 */
final class AirDesk {

  private final Supplier<Answering> source;
  private final CompressorView view;
  private Optional<Shop> wanted = Optional.empty();
  private Optional<Shop> answered = Optional.empty();
  private Optional<AirlineAnswer> answer = Optional.empty();
  private Optional<Question> newest = Optional.empty();

  AirDesk(Supplier<Answering> source, CompressorView view) {
    this.source = source;
    this.view = view;
    view.onSeen(this::askIfSeen);
    view.onStop(this::stop);
    view.onAgain(this::ask);
  }

  /** The answer, if it is that of the shop as it stands. */
  Optional<AirlineAnswer> fresh() {
    return isFresh() ? answer : Optional.empty();
  }

  private boolean isFresh() {
    return wanted.isPresent() && wanted.equals(answered);
  }

  /** The shop is another now: nothing is asked until it is known to be in order. */
  void age(String why) {
    cancel();
    wanted = Optional.empty();
    view.age(why);
  }

  /** This shop is in order and has its answer above. */
  void want(Shop shop) {
    cancel();
    wanted = Optional.of(shop);
    if (isFresh()) {
      view.freshen();
    } else {
      view.age("");
      askIfSeen();
    }
  }

  private void askIfSeen() {
    if (view.isSeen() && newest.isEmpty() && !isFresh()) {
      ask();
    }
  }

  private void ask() {
    cancel();
    wanted.ifPresent(
        shop -> {
          Question question = new Question(shop);
          newest = Optional.of(question);
          view.busy(0);
          question.execute();
        });
  }

  private void stop() {
    cancel();
    view.stopped("Stopped. Grey figures are older.");
  }

  private void cancel() {
    newest.ifPresent(question -> question.cancel(false));
    newest = Optional.empty();
  }

  private final class Question extends SwingWorker<Optional<AirlineAnswer>, Double> {

    private final Shop shop;

    Question(Shop shop) {
      this.shop = shop;
    }

    @Override
    protected Optional<AirlineAnswer> doInBackground() {
      return source
          .get()
          .air(
              shop,
              new PlaceWatch() {
                @Override
                public void at(double done) {
                  publish(done);
                }

                @Override
                public boolean isCancelled() {
                  return Question.this.isCancelled();
                }
              });
    }

    private boolean isNewest() {
      return !isCancelled() && newest.isPresent() && newest.get() == this;
    }

    @Override
    protected void process(List<Double> parts) {
      if (isNewest()) {
        view.busy(parts.stream().mapToDouble(part -> part).max().orElse(0));
      }
    }

    @Override
    protected void done() {
      if (!isNewest()) {
        return;
      }
      newest = Optional.empty();
      try {
        answer = get();
        answered = Optional.of(shop);
        view.show(answer);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (CancellationException e) {
        view.stopped("Stopped. Grey figures are older.");
      } catch (ExecutionException e) {
        String reason = e.getCause().getMessage();
        view.fail(
            "The places could not be compared: "
                + (reason == null ? e.getCause().getClass().getSimpleName() : reason)
                + ".");
      }
    }
  }
}
