package org.loomwright.cli.plan;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.drawing.board.BoardTooSmall;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.papers.PackStamp;
import org.loomwright.papers.PackWriter;
import org.loomwright.papers.hand.GuidePrint;

/**
 * Where a pack goes.
 *
 * @param folder folder, made when the pack is written
 * @param workspace documents the kit is among
 */
record PackFolder(Path folder, Workspace workspace) {

  /**
   * The folder, looked at before long work is done for it.
   *
   * @throws WrongInput when nothing can be written there
   */
  static PackFolder of(Path folder, Workspace workspace) {
    Path there = folder.toAbsolutePath().normalize();
    while (!Files.exists(there)) {
      Path parent = there.getParent();
      if (parent == null) {
        throw wrong(folder, "there is no " + there);
      }
      there = parent;
    }
    if (!Files.isDirectory(there)) {
      throw wrong(folder, there + " is a file");
    }
    if (!Files.isWritable(there)) {
      throw wrong(folder, "nothing may be written in " + there);
    }
    return new PackFolder(folder, workspace);
  }

  /**
   * The folder of one of several kits.
   *
   * @throws WrongInput when the id can't name a folder, or nothing can be written there
   */
  PackFolder sub(String kit) {
    if (!kit.matches("[\\p{L}\\p{N}_][\\p{L}\\p{N}_. -]*")) {
      throw new WrongInput(
          "--out: the kit id '"
              + kit
              + "' can't name a folder; plan this kit alone with --kit, or use letters, digits and"
              + " hyphens in its id.");
    }
    return of(folder.resolve(kit), workspace);
  }

  /**
   * Writes the pack.
   *
   * @throws WrongInput when it can't be written, or the board of the rules is too small for it
   */
  List<Path> write(KitOrder order, Plan plan) {
    try {
      int fitted = workspace.fitted(order.kit().id(), Optional.empty(), GuidePrint.of(plan));
      return PackWriter.write(order, plan, folder, new PackStamp(Optional.empty(), fitted));
    } catch (BoardTooSmall small) {
      throw new WrongInput(
          "rules '"
              + order.rules().id()
              + "', runs.boardWidth and runs.boardHeight: the build board can't be laid out: "
              + small.getMessage()
              + ".");
    } catch (IOException failure) {
      throw wrong(folder, reason(failure));
    }
  }

  private static WrongInput wrong(Path folder, String reason) {
    return new WrongInput(
        "--out: the pack can't be written to "
            + folder
            + ": "
            + reason
            + ". Name a folder in which files can be made.");
  }

  private static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException denied) {
      return "nothing may be written at " + denied.getFile();
    }
    if (failure instanceof FileAlreadyExistsException taken) {
      return taken.getFile() + " is a file";
    }
    if (failure instanceof FileSystemException it && it.getReason() != null) {
      return it.getFile() + ": " + it.getReason();
    }
    return String.valueOf(failure.getMessage());
  }
}
