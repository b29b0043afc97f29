package org.shopclime.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.Warning;

/** The window in which a shop is described and answered. */
public final class ShopWindow {

  private static final ShopPath STATION = ShopPath.parse("place.station");
  private static final int WIDTH = 1340;
  private static final int HEIGHT = 800;
  private static final int LEAST_WIDTH = 640;
  private static final int LEAST_HEIGHT = 420;

  private final JFrame frame = new JFrame();
  private final ShopSession session;
  private final FormSettings settings;
  private final Answers answers;
  private final PartsView parts;
  private final PartEditor editor;
  private final StatusView status;
  private final Middle middle;
  private final ShopMenu menu;
  private final Asking asking;
  private final AirDesk air;
  private final Filing filing;
  private final Outlet outlet;
  private final Questions questions;
  private final Welcome welcome;

  private KnownNames names = KnownNames.withoutStations();
  private UnitSystem units;
  private ShopPath selected = ShopPath.SHOP.child("place");
  private Map<String, String> problems = Map.of();
  private Optional<Shop> asked = Optional.empty();

  /**
   * A window, not yet visible.
   *
   * @param file where the shop is kept
   * @param first shop
   * @param answering where answers come from; asked off the event thread only
   * @param settings what is remembered
   * @param asker what is asked in dialogs over the window
   */
  ShopWindow(
      Optional<Path> file,
      Shop first,
      Supplier<Answering> answering,
      FormSettings settings,
      Function<JFrame, Questions> asker) {
    this.session = new ShopSession(file, first);
    this.settings = settings;
    this.units = first.units();
    this.questions = asker.apply(frame);
    this.answers = new Answers(units, shop -> answering.get().habits(shop));
    this.editor = new PartEditor(new Changes(), () -> names);
    this.parts = new PartsView(new TreeWishes());
    this.status = new StatusView(this::stopAsking, this::go);
    this.middle = new Middle(parts.component(), editor.component(), answers.pictures().component());
    this.menu =
        new ShopMenu(
            this::act,
            this::openRecent,
            answers.pictures().titles(),
            this::turn,
            settings.isDark());
    this.asking = new Asking(answering, new Told());
    this.air = new AirDesk(answering, answers.pictures().compressor());
    this.filing = new Filing(session, questions, settings, answering, this::another);
    this.outlet = new Outlet(questions, status);
    this.welcome =
        new Welcome(first.name(), () -> act(ShopMenu.Deed.NEW), () -> act(ShopMenu.Deed.OPEN));
    build();
    show();
    ask();
  }

  /**
   * Opens the window. Returns at once; the program ends when the window is closed.
   *
   * @param file file the shop was read from, if any
   * @param first shop to show
   */
  public static void open(Optional<Path> file, Shop first) {
    CompletableFuture<Climates> climates = CompletableFuture.supplyAsync(Climates::load);
    CompletableFuture<Answering> answering = climates.thenApply(Answering::of);
    SwingUtilities.invokeLater(
        () -> {
          FormSettings settings = FormSettings.ofUser();
          Look.use(settings.isDark());
          ShopWindow window =
              new ShopWindow(file, first, answering::join, settings, DialogQuestions::new);
          window.frame.setVisible(true);
          Background.run(
              climates::join,
              table -> window.offer(KnownNames.of(table)),
              failed -> window.status.idle("The climate tables could not be read: " + failed));
          file.ifPresent(settings::keepRecent);
          window.filing.offerCopies();
        });
  }

  private void build() {
    JPanel content = new JPanel(new BorderLayout());
    JPanel head =
        new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    head.add(answers.top().component(), "growx, wmin 0");
    head.add(welcome.component(), "growx, wmin 0");
    if (session.file().isPresent()) {
      welcome.leave();
    }
    content.add(head, BorderLayout.NORTH);
    content.add(middle.component(), BorderLayout.CENTER);
    content.add(status.component(), BorderLayout.SOUTH);
    frame.setContentPane(content);
    frame.setJMenuBar(menu.component());
    frame.setName("shop.window");
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            act(ShopMenu.Deed.CLOSE);
          }
        });
    Look.onResized(frame, () -> fit());
    Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    frame.setSize(
        Math.min(Look.scaled(WIDTH), screen.width), Math.min(Look.scaled(HEIGHT), screen.height));
    frame.setMinimumSize(
        new Dimension(Math.min(LEAST_WIDTH, screen.width), Math.min(LEAST_HEIGHT, screen.height)));
    frame.setLocationRelativeTo(null);
    settings
        .window()
        .map(kept -> kept.intersection(screen))
        .filter(kept -> kept.width >= LEAST_WIDTH && kept.height >= LEAST_HEIGHT)
        .ifPresent(frame::setBounds);
    DroppedFile dropped = new DroppedFile(filing::open);
    frame.setTransferHandler(dropped);
    parts.take(dropped);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            parts.focus();
          }
        });
    fit();
  }

  private void fit() {
    double scale = Look.scaled(100) / 100.0;
    middle.fit(frame.getWidth() / scale);
    answers.top().makeShort(frame.getHeight() / scale < 600);
  }

  JFrame frame() {
    return frame;
  }

  ShopSession session() {
    return session;
  }

  Filing filing() {
    return filing;
  }

  List<JMenuItem> additions() {
    return parts.additions();
  }

  Optional<PrintedAnswer> sheet() {
    return answers.sheet();
  }

  /** Whether the whole answer to the shop as it stands is shown. */
  boolean isSettled() {
    return answers.fresh().map(answer -> answer.shop().equals(session.now())).orElse(false)
        && editor.isReadable();
  }

  /** Names of stations are known now. */
  void offer(KnownNames known) {
    names = known;
    show();
  }

  void select(ShopPath path) {
    ShopPath at = path;
    while (!isPart(at)) {
      at = at.parent();
    }
    if (!at.equals(selected)) {
      session.pause();
    }
    selected = at;
    show();
  }

  private boolean isPart(ShopPath path) {
    return path.steps().isEmpty() || parts(Outline.of(session.now(), units)).contains(path);
  }

  private static List<ShopPath> parts(Outline.Node node) {
    List<ShopPath> all = new ArrayList<>(List.of(node.path()));
    node.parts().forEach(part -> all.addAll(parts(part)));
    return all;
  }

  /** Goes to where something is to be minded. */
  private void go(String path) {
    try {
      select(ShopPath.parse(path));
      middle.showFields();
    } catch (NumberFormatException | StringIndexOutOfBoundsException e) {
      status.idle("That is about the shop as a whole.");
    }
  }

  /** Shows the shop as it stands. */
  private void show() {
    Shop shop = session.now();
    parts.show(names.spelled(shop), units, selected);
    editor.show(selected, shop, units);
    editor.complain(problems);
    frame.setTitle(FormText.title(session));
    status.kept(FormText.kept(session));
    menu.show(session, units == UnitSystem.SI, settings.recent());
  }

  /** Another shop is on the desk, or the same was saved. */
  private void another() {
    welcome.leave();
    if (!asked.equals(Optional.of(session.now()))) {
      problems = Map.of();
      select(selected);
      ask();
    } else {
      show();
    }
  }

  private void changed() {
    select(selected);
    filing.touched();
    ask();
  }

  private void ask() {
    asked = Optional.of(session.now());
    answers.age("Reckoning with the change. Until then this is the last answer.");
    air.age("Waits for the answer above; until then this is the last one.");
    asking.ask(session.now());
  }

  private void stopAsking() {
    asking.cancel();
    status.idle("Stopped; the next change starts it again.");
    answers.top().say("The reckoning was stopped; grey figures are older.");
    air.age("The reckoning was stopped; grey figures are older.");
  }

  private void turn(int page) {
    middle.showAnswers();
    answers.pictures().open(page);
  }

  private void openRecent(Path file) {
    filing.open(file);
  }

  private void act(ShopMenu.Deed deed) {
    switch (deed) {
      case NEW -> filing.thenLeave(() -> filing.begin(questions.newShop(names, units)));
      case OPEN -> filing.open();
      case SAVE -> filing.save(() -> {});
      case SAVE_AS -> filing.saveAs(() -> {});
      case REPORT -> outlet.report(answers.fresh(), air.fresh(), units, session.file());
      case PRINT -> outlet.print(answers.sheet());
      case CLOSE -> filing.thenLeave(this::close);
      case UNDO -> {
        session.undo();
        changed();
      }
      case REDO -> {
        session.redo();
        changed();
      }
      case PLACE -> choosePlace();
      case INCH_POUND -> use(UnitSystem.INCH_POUND);
      case SI -> use(UnitSystem.SI);
      case LIGHT -> dress(false);
      case DARK -> dress(true);
      case PARTS -> parts.focus();
      case EDITOR -> {
        middle.showFields();
        editor.focusFirst();
      }
      case ANSWERS -> {
        middle.showAnswers();
        answers.pictures().focus();
      }
      case STEPS -> questions.say("First steps", FormText.STEPS);
      case ABOUT -> questions.say("Shopclime", FormText.ABOUT);
    }
  }

  /** Lets the station be chosen from map and list; the choice is undone on its own. */
  private void choosePlace() {
    if (names.climates().isEmpty()) {
      status.idle("The climate tables are still being read. Try again in a moment.");
      return;
    }
    Climates climates = names.climates().get();
    Optional<Station> current =
        climates.find(session.now().place().station()).map(StationClimate::station);
    questions
        .place(climates, current, units)
        .filter(station -> !current.equals(Optional.of(station)))
        .ifPresent(
            station -> {
              session.pause();
              session.propose(STATION, station.id());
              session.pause();
              changed();
            });
  }

  private void use(UnitSystem system) {
    units = system;
    answers.use(system);
    show();
  }

  private void dress(boolean dark) {
    Look.use(dark);
    settings.keepDark(dark);
    answers.redo();
    show();
  }

  void close() {
    if (frame.getExtendedState() == Frame.NORMAL) {
      settings.keepWindow(frame.getBounds());
    }
    asking.cancel();
    air.age("");
    filing.close();
    frame.dispose();
  }

  private void mind(List<Warning> warnings) {
    List<StatusView.Line> lines = new ArrayList<>();
    problems.forEach(
        (path, text) ->
            lines.add(
                new StatusView.Line(
                    path, "To mend - " + FormText.place(session.now(), path) + ": " + text)));
    for (Warning warning : warnings) {
      lines.add(new StatusView.Line(warning.path(), FormText.warning(session.now(), warning)));
    }
    status.mind(lines);
  }

  /** What editors propose. */
  private final class Changes implements Bench.Proposals {

    @Override
    public void propose(ShopPath path, Object value) {
      session.propose(path, value);
      changed();
    }

    @Override
    public void choosePlace() {
      ShopWindow.this.choosePlace();
    }

    @Override
    public void readableChanged() {
      if (!editor.isReadable()) {
        answers.age("The marked field cannot be taken yet; this is the last answer.");
        air.age("The marked field cannot be taken yet; this is the last answer.");
      } else if (asked.equals(Optional.of(session.now()))) {
        ask();
      }
    }
  }

  /** What is wished at the tree. */
  private final class TreeWishes implements PartsView.Wishes {

    @Override
    public void selected(ShopPath path) {
      select(path);
    }

    @Override
    public void add(Outline.Addition addition) {
      List<?> list = (List<?>) addition.list().value(session.now()).orElseThrow();
      insert(addition.list(), list, list.size(), addition.element());
    }

    @Override
    public void duplicate() {
      ShopPath list = selected.list();
      List<?> elements = (List<?>) list.value(session.now()).orElseThrow();
      Record same = selected.record(session.now()).orElseThrow();
      Record named = Starts.named(same, Outline.taken(session.now(), list));
      Record own = Starts.withOwnNames(named, session.now(), list);
      insert(list, elements, selected.last().index() + 1, own);
    }

    private void insert(ShopPath list, List<?> elements, int at, Record element) {
      session.propose(list, Starts.inserted(elements, at, element));
      selected = list.parent().child(list.last().name(), at);
      changed();
      middle.showFields();
      editor.focusFirst();
    }

    @Override
    public void remove() {
      ShopPath list = selected.list();
      List<Object> elements = new ArrayList<>((List<?>) list.value(session.now()).orElseThrow());
      int at = selected.last().index();
      elements.remove(at);
      session.propose(list, elements);
      selected =
          elements.isEmpty() ? list.parent() : selected.sibling(Math.min(at, elements.size() - 1));
      changed();
      parts.focus();
    }

    @Override
    public void edit() {
      middle.showFields();
      editor.focusFirst();
    }
  }

  /** What is told of answers. */
  private final class Told implements Asking.Told {

    @Override
    public void checked(Shop shop, ShopCheck.Findings findings) {
      Map<String, String> found = new HashMap<>();
      for (Problem problem : findings.problems()) {
        found.put(problem.path(), "found " + problem.found() + "; takes " + problem.takes());
      }
      problems = found;
      editor.complain(found);
      mind(findings.warnings());
      if (!found.isEmpty()) {
        answers.age("Something does not fit together yet; this is the last answer.");
        air.age("Something does not fit together yet; this is the last answer.");
        status.idle(
            findings.problems().stream()
                .map(problem -> FormText.problem(shop, problem))
                .findFirst()
                .orElse(""));
      }
    }

    @Override
    public void quick(Shop shop, CoreAnswer core) {
      if (editor.isReadable()) {
        answers.quick(shop, core);
      }
    }

    @Override
    public void whole(SizeAnswer answer) {
      status.idle("");
      mind(answer.warnings());
      if (editor.isReadable()) {
        answers.whole(answer);
        air.want(answer.shop());
      }
    }

    @Override
    public void at(String part, double done) {
      status.busy(part, done);
    }

    @Override
    public void stopped(String why) {
      status.idle(why);
      answers.age(why);
      air.age(why);
    }
  }
}
