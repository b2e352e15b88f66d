package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.kit.KitOrder;

class WorkspaceReaderTest {
  @Test
  void readsAFolderWithItsSubFolder() {
    Read.Good good = Small.good(WorkspaceReader.read(Small.FOLDER));
    Workspace workspace = good.workspace();
    assertThat(good.files())
        .extracting(LoadedFile::file)
        .containsExactly(
            "alder-van.json",
            "cabin-fan.json",
            "fan-kit.json",
            "parts/bench-parts.json",
            "shop-rules.json");
    assertThat(workspace.vehicles().get(0).runs().get(1).length().mm()).isEqualTo(86 * 25.4);
    assertThat(workspace.vehicles().get(0).runs().get(1).restraint()).isFalse();
    assertThat(workspace.rules().get(0).slackPerEnd().value().mm()).isEqualTo(60);
    assertThat(workspace.equipment().get(0).plugs().get(0).pins().get(3).need()).isEmpty();
    assertThat(workspace).isEqualTo(Small.good(Small.workspace().read()).workspace());
  }

  @Test
  void resolvesAKit() {
    Workspace workspace = Small.good(Small.workspace().read()).workspace();
    KitOrder order = ((KitOrders.Found) KitOrders.resolve(workspace, "fan-kit")).order();
    assertThat(order.vehicle().fuseBlocks().get(0).slots().get(1).metalWhen())
        .isEqualTo(Condition.is("rear-block/F9/metal", "yes"));
    assertThat(order.plug(order.kit().mounts().get(0))).isPresent();
    assertThat(order.parts().housings()).hasSize(1);
    assertThat(KitOrders.only(workspace)).isEqualTo(new KitOrders.Found(order));
    assertThat(KitOrders.resolve(workspace, "fan-kti"))
        .isEqualTo(
            new KitOrders.NotFound(
                new Problem(
                    "",
                    "",
                    "fan-kti",
                    "there is no kit 'fan-kti'; did you mean 'fan-kit'? The kits are fan-kit")));
  }

  @Test
  void saysWhatIsWrongWithAFolder(@TempDir Path folder) throws IOException {
    assertThat(Small.words(WorkspaceReader.read(folder.resolve("no"))))
        .containsExactly(folder.resolve("no") + ": there is no such folder");
    assertThat(Small.words(WorkspaceReader.read(folder)))
        .containsExactly(
            folder + ": the folder holds no document; documents are files ending in .json");
    Path file =
        Files.write(folder.resolve("a.json"), "caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(Small.words(WorkspaceReader.read(folder)))
        .containsExactly("a.json: the file is not text in UTF-8; save it as UTF-8");
    assertThat(Small.words(WorkspaceReader.read(file)))
        .containsExactly(
            file + ": this is a file; give the folder that holds the documents instead");
  }

  @Test
  void passesOverResultsAndByteOrderMarks() {
    assertThat(Small.workspace().plus("out/result.json", "{\"kind\": \"plan\"}").problems())
        .isEmpty();
    assertThat(
            Small.workspace()
                .with("fan-kit.json", "{\n  \"kind\"", "\ufeff{\n  \"kind\"")
                .problems())
        .isEmpty();
  }
}
