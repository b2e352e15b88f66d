package org.loomwright.web.shop;

import java.util.List;
import java.util.Optional;

/**
 * A stop of the tour through the demo.
 *
 * @param title what it is about
 * @param words what to see there
 * @param task what to do there
 * @param href where it is
 */
public record TourStop(String title, String words, String task, String href) {
  private static final String VAN = "packer";
  private static final String BLOCK = "rear-block";
  private static final String KIT = "crew-comfort";

  /** All stops in order. */
  public static final List<TourStop> ALL =
      List.of(
          new TourStop(
              "A vehicle",
              "This van left the factory in many builds. Everything that differs is a trait with a"
                  + " way to tell it on the real thing.",
              "Look at “What differs”: each line says on which builds a wire or a feed is there.",
              Href.vehicle(VAN)),
          new TourStop(
              "A face",
              "A fuse block as the fitter sees it. Words and picture come from one geometry, so they"
                  + " always agree.",
              "Turn the view and choose a slot: its place in words changes with the view.",
              Href.face(VAN, BLOCK)),
          new TourStop(
              "A gap",
              "A kit begins with what is missing: for each need, which builds have it, lack it, or"
                  + " are not known.",
              "Read down the first need.",
              Href.kit(KIT, Stage.GAP)),
          new TourStop(
              "The sums",
              "Every figure stands beside its limit, the tightest first.",
              "Open a line to follow its figure back to what it was reckoned from.",
              Href.kit(KIT, Stage.SUMS)),
          new TourStop(
              "A change",
              "You decide. Ways can be forbidden or preferred; the kit is planned anew, and the page"
                  + " says what your change did.",
              "Forbid a way that is in use, then read what became of the kit.",
              Href.kit(KIT, Stage.WAYS)),
          new TourStop(
              "The way back",
              "Every save is a revision of its own and nothing is lost.",
              "See your change in words, and go back to the revision before it.",
              Href.history("kit", KIT)));

  /** The stop that a cookie names by its number, from 1. */
  public static Optional<Integer> number(String text) {
    return text.matches("[1-9]") && Integer.parseInt(text) <= ALL.size()
        ? Optional.of(Integer.parseInt(text))
        : Optional.empty();
  }

  /** Whether a shop holds the documents that the tour shows. */
  public static boolean isIn(Shop shop) {
    return shop.vehicle(VAN).isPresent() && shop.kit(KIT).isPresent();
  }
}
