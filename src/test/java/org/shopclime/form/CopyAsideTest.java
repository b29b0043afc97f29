package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shopclime.shop.Shop;

class CopyAsideTest {

  private static final long PATIENCE = 120_000;

  @TempDir Path folder;

  @Test
  void whatIsKeptAndDroppedLeavesNothing() throws Exception {
    CopyAside copy = new CopyAside(new FormSettings(folder));
    Shop shop = SmallShop.shop();
    for (int i = 0; i < 50; i++) {
      copy.keep(shop.withName("Shop " + i));
      copy.drop();
    }
    copy.close();
    assertThat(copy.isDone(PATIENCE)).isTrue();
    assertThat(files()).isEmpty();
  }

  @Test
  void theLastCopyStaysAndNoneComesAfterTheEnd() throws Exception {
    FormSettings settings = new FormSettings(folder);
    CopyAside copy = new CopyAside(settings);
    copy.drop();
    copy.keep(SmallShop.shop());
    copy.close();
    assertThat(copy.isDone(PATIENCE)).isTrue();
    assertThat(files()).containsExactly(settings.unsavedCopy());
    copy.drop();
    copy.keep(SmallShop.shop());
    assertThat(files()).containsExactly(settings.unsavedCopy());
  }

  @Test
  void aFolderThatCannotBeIsNoHarm() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    CopyAside copy = new CopyAside(new FormSettings(file.resolve("settings")));
    copy.keep(SmallShop.shop());
    copy.drop();
    copy.close();
    assertThat(copy.isDone(PATIENCE)).isTrue();
    assertThat(files()).containsExactly(file);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
