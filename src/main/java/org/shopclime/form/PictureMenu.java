package org.shopclime.form;

import java.awt.Component;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.JFileChooser;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jfree.chart.ChartPanel;
import org.shopclime.report.ChartImage;
import org.shopclime.report.FileAside;

/** What the right button offers on a picture: to copy it, and to save it for a letter or a post. */
final class PictureMenu {

  /** Dots for each of the screen, so that print is sharp. */
  private static final double SHARP = 2;

  private static final String EXTENSION = ".png";

  private PictureMenu() {}

  static JPopupMenu of(ChartPanel panel) {
    JPopupMenu menu = new JPopupMenu();
    menu.setName(panel.getName() + ".menu");
    JMenuItem copy = new JMenuItem("Copy picture", 'C');
    copy.addActionListener(event -> copy(panel));
    JMenuItem save = new JMenuItem("Save picture as PNG…", 'S');
    save.addActionListener(event -> save(panel));
    menu.add(copy);
    menu.add(save);
    return menu;
  }

  /** The picture as it stands in the window, as a PNG file of twice its dots. */
  static byte[] png(ChartPanel panel) {
    double scale = Look.scaled(1000) / 1000.0;
    return ChartImage.png(
        panel.getChart(),
        (int) Math.round(panel.getWidth() / scale),
        (int) Math.round(panel.getHeight() / scale),
        SHARP);
  }

  /** A file's name with the ending of a picture. */
  static Path named(Path file) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(EXTENSION)
        ? file
        : file.resolveSibling(name + EXTENSION);
  }

  private static boolean isDrawn(ChartPanel panel) {
    return panel.getChart() != null && panel.getWidth() > 0 && panel.getHeight() > 0;
  }

  private static void copy(ChartPanel panel) {
    if (!isDrawn(panel)) {
      return;
    }
    try {
      Image image = ImageIO.read(new ByteArrayInputStream(png(panel)));
      Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new Picture(image), null);
    } catch (IOException | IllegalStateException e) {
      tell(panel, "The picture could not be copied: " + e.getMessage());
    }
  }

  private static void save(ChartPanel panel) {
    if (!isDrawn(panel)) {
      return;
    }
    byte[] picture = png(panel);
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("Save the picture as");
    chooser.setFileFilter(new FileNameExtensionFilter("Pictures (*.png)", "png"));
    chooser.setSelectedFile(
        new java.io.File(
            chooser.getCurrentDirectory(), panel.getName().replace("chart.", "") + EXTENSION));
    while (chooser.showSaveDialog(panel) == JFileChooser.APPROVE_OPTION) {
      Path file = named(chooser.getSelectedFile().toPath());
      if (Files.exists(file) && !DialogQuestions.mayReplace(panel, file)) {
        continue;
      }
      Background.run(
          () -> {
            FileAside.write(file, picture);
            return file;
          },
          done -> {},
          failed -> tell(panel, file + " could not be written. " + failed));
      return;
    }
  }

  private static void tell(Component over, String text) {
    JOptionPane.showMessageDialog(over, text, "No picture", JOptionPane.WARNING_MESSAGE);
  }

  /** An image on the clipboard. */
  private record Picture(Image image) implements Transferable {

    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return List.of(DataFlavor.imageFlavor).toArray(new DataFlavor[0]);
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return DataFlavor.imageFlavor.equals(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      if (!isDataFlavorSupported(flavor)) {
        throw new UnsupportedFlavorException(flavor);
      }
      return image;
    }
  }
}
