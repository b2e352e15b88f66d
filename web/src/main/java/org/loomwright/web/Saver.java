package org.loomwright.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.Revision;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.StoreException;
import org.loomwright.web.shop.Edits;
import org.loomwright.web.shop.Workbench;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Saves what a form asks for, and answers: the page to go back to with a notice, both versions side
 * by side where someone else changed the same part, or the problems for the form to show.
 */
final class Saver {
  private static final Logger LOG = LoggerFactory.getLogger(Saver.class);

  /** Form field and cookie: the name a person signs with. */
  static final String WHO = "who";

  /** Form field: what a save is for, in the person's words. */
  static final String WHY = "why";

  private final Workbench bench;
  private final PageWriter writer;

  Saver(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  /**
   * Saves.
   *
   * @param back page to show after it
   * @return problems because of which nothing was saved; when there is none the answer is given
   */
  List<Problem> save(Context ctx, DocumentKey key, String text, long basedOn, String back) {
    return save(ctx, key, text, basedOn, back, "");
  }

  /**
   * Saves, and tells the history what was done where the person did not say what for.
   *
   * @param back page to show after it
   * @param done what was done, in words
   */
  List<Problem> save(
      Context ctx, DocumentKey key, String text, long basedOn, String back, String done) {
    return save(ctx, key, text, List.of(), basedOn, back, done);
  }

  /**
   * Saves a text together with papers that were made of it.
   *
   * @param papers bytes of the papers, to be kept
   * @param back page to show after it
   * @param done what was done, in words
   */
  List<Problem> save(
      Context ctx,
      DocumentKey key,
      String text,
      List<byte[]> papers,
      long basedOn,
      String back,
      String done) {
    return edit(
        ctx,
        key,
        by -> new Edits(store()).save(new Draft(key, text, by, papers), basedOn),
        back,
        done);
  }

  /** Says that a document is no longer used; answers as {@link #save} does. */
  List<Problem> retire(Context ctx, DocumentKey key, long basedOn, String back) {
    return edit(ctx, key, by -> new Edits(store()).retire(key, basedOn, by), back, "");
  }

  private List<Problem> edit(
      Context ctx,
      DocumentKey key,
      Function<Signature, Edits.Outcome> edit,
      String back,
      String done) {
    Optional<Signature> by =
        signature(ctx).map(it -> it.why().isEmpty() ? new Signature(it.who(), done) : it);
    if (by.isEmpty()) {
      return List.of(NO_NAME);
    }
    Edits.Outcome outcome;
    try {
      outcome = edit.apply(by.get());
    } catch (StoreException refusal) {
      LOG.info("A change of {} was not saved.", key.shown(), refusal);
      return List.of(new Problem("", "", "", String.valueOf(refusal.getMessage())));
    }
    if (outcome instanceof Edits.Refused refused) {
      return refused.problems();
    }
    answer(ctx, key, ((Edits.Kept) outcome).result(), back);
    return List.of();
  }

  /** Who signs, with their reason; empty when no name was given. The name is kept for next time. */
  static Optional<Signature> signature(Context ctx) {
    String typed = Optional.ofNullable(ctx.formParam(WHO)).orElse("").strip();
    String who = name(ctx);
    if (who.isBlank()) {
      return Optional.empty();
    }
    if (!typed.isEmpty()) {
      Cookies.keep(ctx, WHO, typed);
    }
    String why = Optional.ofNullable(ctx.formParam(WHY)).orElse("").strip();
    return Optional.of(new Signature(who, why));
  }

  /** The name a person signs with: as typed, else as kept; empty when there is none. */
  static String name(Context ctx) {
    String typed = Optional.ofNullable(ctx.formParam(WHO)).orElse("").strip();
    return typed.isEmpty() ? Cookies.of(ctx, WHO) : typed;
  }

  /** What is said where a save lacks a name. */
  static final Problem NO_NAME =
      new Problem(
          "", WHO, "", "write your name, so that others know whom to ask about this change");

  /** The store; pages that change something are there only where there is one. */
  Store store() {
    return bench.store().orElseThrow(() -> new IllegalStateException("pages without a store"));
  }

  /** Answers with what the store did. */
  void answer(Context ctx, DocumentKey key, SaveResult result, String back) {
    if (result instanceof SaveResult.Conflict conflict) {
      ctx.status(HttpStatus.CONFLICT);
      writer.show(
          ctx,
          bench.now(),
          "Two changes of the same part",
          "conflict.jte",
          Map.of("key", key, "conflict", conflict, "back", back));
      return;
    }
    Revision newest =
        result instanceof SaveResult.Saved saved
            ? saved.revision()
            : result instanceof SaveResult.Merged merged
                ? merged.merged().revision()
                : ((SaveResult.Unchanged) result).newest();
    boolean same = result instanceof SaveResult.Unchanged;
    ctx.redirect(Back.with(back, Done.text(newest, same)), HttpStatus.SEE_OTHER);
  }
}
