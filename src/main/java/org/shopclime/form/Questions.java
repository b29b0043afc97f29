package org.shopclime.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** What the window asks the person in dialogs; tests answer in their stead. */
interface Questions {

  /** What to do with changes that are not saved. */
  enum Unsaved {
    /** Save them first. */
    SAVE,
    /** Forget them. */
    DISCARD,
    /** Go back to the form. */
    BACK
  }

  /** Asks what to do with unsaved changes. */
  Unsaved unsaved(String question);

  /** Asks for a file to open. */
  Optional<Path> fileToOpen(Optional<Path> near);

  /** Asks where to save; whether an existing file may be replaced has been asked. */
  Optional<Path> fileToSave(Optional<Path> near, String name);

  /** Asks for a folder for the report. */
  Optional<Path> folderForReport(Optional<Path> near);

  /** Asks for a building and a kind of work to start from. */
  Optional<Shop> newShop(KnownNames names, UnitSystem units);

  /** Asks for the station whose weather the shop gets. */
  Optional<Station> place(Climates climates, Optional<Station> current, UnitSystem units);

  /** Asks whether to go on with what was not saved last time. */
  boolean goOnWithCopy(String name);

  /** Says what is wrong, line by line. */
  void problems(String title, List<String> lines);

  /** Says something. */
  void say(String title, String text);
}
