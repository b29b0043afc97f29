package org.shopclime.form;

import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** Asks in dialogs over the window. */
final class DialogQuestions implements Questions {

  private static final String EXTENSION = ".json";
  private static final int LINES = 12;

  private final Component over;

  DialogQuestions(Component over) {
    this.over = over;
  }

  @Override
  public Unsaved unsaved(String question) {
    Object[] choices = {"Save", "Don't save", "Back"};
    int choice =
        JOptionPane.showOptionDialog(
            over,
            question,
            "Not saved yet",
            JOptionPane.YES_NO_CANCEL_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            choices,
            choices[0]);
    return switch (choice) {
      case 0 -> Unsaved.SAVE;
      case 1 -> Unsaved.DISCARD;
      default -> Unsaved.BACK;
    };
  }

  private static JFileChooser chooser(Optional<Path> near) {
    JFileChooser chooser = new JFileChooser();
    near.map(Path::toAbsolutePath)
        .map(Path::getParent)
        .ifPresent(folder -> chooser.setCurrentDirectory(folder.toFile()));
    return chooser;
  }

  @Override
  public Optional<Path> fileToOpen(Optional<Path> near) {
    JFileChooser chooser = chooser(near);
    chooser.setDialogTitle("Open a shop");
    chooser.setFileFilter(new FileNameExtensionFilter("Shop files (*.json)", "json"));
    return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Path> fileToSave(Optional<Path> near, String name) {
    JFileChooser chooser = chooser(near);
    chooser.setDialogTitle("Save the shop as");
    chooser.setFileFilter(new FileNameExtensionFilter("Shop files (*.json)", "json"));
    String plain = name.strip().replaceAll("[^\\p{L}\\p{N} _-]", "").strip();
    chooser.setSelectedFile(
        new java.io.File(
            chooser.getCurrentDirectory(), (plain.isEmpty() ? "shop" : plain) + EXTENSION));
    while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
      Path file = chooser.getSelectedFile().toPath();
      if (!file.getFileName().toString().contains(".")) {
        file = file.resolveSibling(file.getFileName() + EXTENSION);
      }
      if (!Files.exists(file) || mayReplace(over, file)) {
        return Optional.of(file);
      }
    }
    return Optional.empty();
  }

  /** The Enter key keeps the file that is there. */
  static boolean mayReplace(Component over, Path file) {
    Object[] choices = {"Replace it", "Keep it"};
    return JOptionPane.showOptionDialog(
            over,
            file.getFileName() + " is there already. Replace it?",
            "Replace the file?",
            JOptionPane.YES_NO_OPTION,
            JOptionPane.WARNING_MESSAGE,
            null,
            choices,
            choices[1])
        == 0;
  }

  @Override
  public Optional<Path> folderForReport(Optional<Path> near) {
    JFileChooser chooser = chooser(near);
    chooser.setDialogTitle("Folder for the report");
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    chooser.setApproveButtonText("Write the report here");
    return chooser.showDialog(over, "Write the report here") == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  @Override
  public Optional<Shop> newShop(KnownNames names, UnitSystem units) {
    NewShopBox box = new NewShopBox(names, units);
    while (JOptionPane.showOptionDialog(
            over,
            box.component(),
            "New shop",
            JOptionPane.OK_CANCEL_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            new Object[] {"Start with this", "Back"},
            "Start with this")
        == 0) {
      Optional<Shop> shop = box.shop();
      if (shop.isPresent()) {
        return shop;
      }
    }
    return Optional.empty();
  }

  @Override
  public Optional<Station> place(Climates climates, Optional<Station> current, UnitSystem units) {
    return PlaceDialog.choose(over, climates, current, units);
  }

  @Override
  public boolean goOnWithCopy(String name) {
    Object[] choices = {"Go on with it", "Forget it"};
    return JOptionPane.showOptionDialog(
            over,
            "Changes to \"" + name + "\" were not saved last time. A copy of them is still there.",
            "Go on where you left off?",
            JOptionPane.YES_NO_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            choices,
            choices[0])
        == 0;
  }

  @Override
  public void problems(String title, List<String> lines) {
    String mark = lines.size() > 1 ? "• " : "";
    JTextArea text = new JTextArea(mark + String.join("\n" + mark, lines));
    text.setEditable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setRows(Math.min(LINES, 2 * lines.size() + 1));
    text.setColumns(56);
    text.setCaretPosition(0);
    JScrollPane scroll = new JScrollPane(text);
    scroll.setMinimumSize(new Dimension(200, 80));
    JOptionPane.showMessageDialog(over, scroll, title, JOptionPane.WARNING_MESSAGE);
  }

  @Override
  public void say(String title, String text) {
    JOptionPane.showMessageDialog(over, text, title, JOptionPane.INFORMATION_MESSAGE);
  }
}
