package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.job.JobState;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.stock.StockState;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Documents;
import org.loomwright.store.Revision;
import org.loomwright.store.Version;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a job that names the serial number of its kit moves in the batches: that kit is fitted, and
 * one that the job named by mistake is on the shelf again.
 *
 * @param batch the batch as it is
 * @param text its text with the kits moved
 */
record StockMove(Revision batch, String text) {
  private static final String STATE = "state";
  private static final String JOB = "job";

  /** Moves that go with a text of a job; none for other documents. */
  static List<StockMove> of(Documents documents, DocumentKey key, JsonNode job) {
    String serial = job.path("serial").asString("").strip();
    String state = job.path(STATE).asString("");
    boolean goesIn =
        state.equals(word(JobState.UNDER_WAY.words()))
            || state.equals(word(JobState.SIGNED_OFF.words()));
    if (!key.kind().equals(DocumentKind.JOB.word()) || serial.isEmpty() || !goesIn) {
      return List.of();
    }
    List<StockMove> moves = new ArrayList<>();
    for (Revision it : documents.newest()) {
      if (it.key().kind().equals(DocumentKind.BATCH.word())) {
        documents
            .newest(it.key())
            .flatMap(batch -> of(batch, serial, key.id()))
            .ifPresent(moves::add);
      }
    }
    return moves;
  }

  private static Optional<StockMove> of(Version batch, String serial, String job) {
    return JsonText.parse(batch.content()) instanceof JsonText.Tree tree
            && isMoved(tree.node().path("items"), serial, job)
        ? Optional.of(new StockMove(batch.revision(), tree.node().toPrettyString() + "\n"))
        : Optional.empty();
  }

  /** Moves the items; whether any was moved. */
  private static boolean isMoved(JsonNode items, String serial, String job) {
    Set<String> here = Set.of(word(StockState.ON_THE_SHELF.words()), word(StockState.SOLD.words()));
    boolean moved = false;
    for (JsonNode it : items) {
      if (it instanceof ObjectNode item) {
        boolean own = item.path("serial").asString("").equals(serial);
        if (own && here.contains(item.path(STATE).asString(""))) {
          item.put(STATE, word(StockState.FITTED.words())).put(JOB, job);
          moved = true;
        } else if (!own && item.path(JOB).asString("").equals(job)) {
          item.put(STATE, word(StockState.ON_THE_SHELF.words())).remove(JOB);
          moved = true;
        }
      }
    }
    return moved;
  }

  /** As documents write it. */
  private static String word(String words) {
    return words.replace(' ', '-');
  }
}
