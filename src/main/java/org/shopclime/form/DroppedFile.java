package org.shopclime.form;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Takes a file that is dragged from a folder onto the window. */
final class DroppedFile extends TransferHandler {

  private static final long serialVersionUID = 1L;

  private final transient Consumer<Path> opener;

  /**
   * A taker of files.
   *
   * @param opener opens one, later on the event thread
   */
  DroppedFile(Consumer<Path> opener) {
    this.opener = opener;
  }

  @Override
  public boolean canImport(TransferSupport dragged) {
    return dragged.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport dragged) {
    if (!canImport(dragged)) {
      return false;
    }
    Optional<Path> file = first(dragged.getTransferable());
    // a question about unsaved changes must not hold up the folder's window
    file.ifPresent(path -> SwingUtilities.invokeLater(() -> opener.accept(path)));
    return file.isPresent();
  }

  private static Optional<Path> first(Transferable dragged) {
    try {
      Object files = dragged.getTransferData(DataFlavor.javaFileListFlavor);
      return files instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof File file
          ? Optional.of(file.toPath())
          : Optional.empty();
    } catch (UnsupportedFlavorException | IOException e) {
      return Optional.empty();
    }
  }
}
