package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.LetterWidths;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Sheet.Hold;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.Words;
import org.loomwright.model.design.Lead;

/**
 * What is said of a stop: its name, and below it each thing that leads end in, with its symbol and
 * the leads.
 */
final class Card {
  private static final double PAD_MM = 1;
  private static final double GAP_MM = 0.9;
  private static final double SYMBOL_MM = EndPen.SIDE_MM + 1.4;
  private static final double SWATCH_MM = 4.4;

  private final Stop stop;
  private final double size;
  private final double width;
  private final boolean numbered;
  private final List<String> title;
  private final List<Row> rows = new ArrayList<>();

  /** A row: words, and lines of ends. */
  private record Row(EndRow of, List<String> words, List<Chip> chips, double height) {}

  /**
   * An end in its row.
   *
   * @param left from the card's left edge, mm
   * @param top from the row's upper edge, mm
   */
  private record Chip(int lead, List<String> lines, double left, double top) {}

  /**
   * @param numbered whether the number of the stop stands before its name
   * @param size font size, mm
   * @param width width, mm
   */
  Card(Stop stop, List<Lead> leads, boolean numbered, double size, double width) {
    this.stop = stop;
    this.size = size;
    this.numbered = numbered;
    this.width = width;
    this.title = Words.wrap(bare(stop.name()), size, width - 2 * PAD_MM - badgeMm());
    for (EndRow row : stop.ends()) {
      rows.add(row(row, leads));
    }
  }

  /** A card as wide as its name asks for, with room for a few ends side by side. */
  static Card fitting(Stop stop, List<Lead> leads, double size, double most) {
    if (stop.ends().isEmpty()) {
      Card narrow = new Card(stop, leads, false, size, Math.min(most, 26));
      double own = Words.width(narrow.title, size) + 2 * PAD_MM + 0.1;
      return new Card(stop, leads, false, size, Math.min(most, own));
    }
    Card card = new Card(stop, leads, true, size, Math.min(most, 32));
    for (double width = 38; width <= most && card.height() > 0.8 * card.width; width += 7) {
      card = new Card(stop, leads, true, size, width);
    }
    return card;
  }

  private static String bare(String name) {
    return name.startsWith("the ") ? name.substring(4) : name;
  }

  private double badgeMm() {
    return numbered ? 2 * badgeRadius() + 1 : 0;
  }

  private double badgeRadius() {
    return 0.75 * size;
  }

  double width() {
    return width;
  }

  double height() {
    double rowsMm = rows.stream().mapToDouble(it -> it.height() + GAP_MM).sum();
    double titleMm = Words.height(title, size);
    return (numbered ? Math.max(titleMm, 2 * badgeRadius()) : titleMm)
        + rowsMm
        + (rows.isEmpty() && !numbered ? 0.4 : 2 * PAD_MM);
  }

  Stop stop() {
    return stop;
  }

  private Row row(EndRow row, List<Lead> leads) {
    double left = PAD_MM + SYMBOL_MM;
    double room = width - left - PAD_MM;
    String name = row.rework() ? "changed in the vehicle: " + row.words() : row.words();
    List<String> words = Words.wrap(name, size, room);
    double line = Words.PITCH * size;
    double top = words.size() * line;
    double x = left;
    double high = 0;
    List<Chip> chips = new ArrayList<>();
    for (EndRow.End end : row.ends()) {
      String text = text(leads.get(end.lead()).id(), end);
      double wide = SWATCH_MM + size * LetterWidths.ems(text) + 1.6;
      List<String> lines = List.of(text);
      if (wide - 1.6 > room) {
        lines = Words.wrap(text, size, room - SWATCH_MM);
        wide = room;
      }
      if (x > left && x + wide - 1.6 > left + room) {
        x = left;
        top += high;
        high = 0;
      }
      chips.add(new Chip(end.lead(), lines, x, top));
      high = Math.max(high, lines.size() * line);
      x += wide;
    }
    return new Row(row, words, chips, Math.max(EndPen.SIDE_MM, top + high));
  }

  private static String text(String id, EndRow.End end) {
    return id
        + (end.where().isEmpty() ? "" : " in " + end.where())
        + (end.cases().isEmpty() ? "" : " (" + String.join(" ", end.cases()) + ")");
  }

  /**
   * Draws the card.
   *
   * @param always by lead, whether it serves all cases of its component
   */
  void draw(Sheet sheet, List<Lead> leads, List<Boolean> always, double left, double top) {
    Box box = Box.at(left, top, width, height());
    String ink = stop.used() ? Sheet.INK : "#555";
    if (!rows.isEmpty()) {
      sheet.rect("card", box, "#fff", Sheet.INK, 0.3);
    }
    double head = Words.height(title, size);
    double y = top + (rows.isEmpty() && !numbered ? 0.2 : PAD_MM);
    if (numbered) {
      double radius = badgeRadius();
      double middle = y + Math.max(head, 2 * radius) / 2;
      badge(sheet, stop, new Spot(left + PAD_MM + radius, middle), radius, size);
      y += Math.max(0, radius - head / 2);
      head += Math.max(0, radius - head / 2);
    }
    for (int i = 0; i < title.size(); i++) {
      double middle = y + (i + 0.5) * Words.PITCH * size;
      sheet.text(Hold.LEFT, left + PAD_MM + badgeMm(), middle, size, ink, title.get(i));
    }
    y += head + GAP_MM;
    for (Row row : rows) {
      EndPen.draw(
          sheet,
          row.of().kind(),
          new Spot(left + PAD_MM + EndPen.SIDE_MM / 2, y + EndPen.SIDE_MM / 2));
      sheet.lines(Hold.LEFT, left + PAD_MM + SYMBOL_MM, y, size, row.words());
      for (Chip chip : row.chips()) {
        double middle = y + chip.top() + Words.PITCH * size / 2;
        swatch(
            sheet,
            leads.get(chip.lead()),
            always.get(chip.lead()),
            left + chip.left(),
            middle,
            3.6);
        sheet.lines(Hold.LEFT, left + chip.left() + SWATCH_MM, y + chip.top(), size, chip.lines());
      }
      y += row.height() + GAP_MM;
    }
  }

  /** A piece of a track. */
  static void swatch(
      Sheet sheet, Lead lead, boolean always, double left, double middle, double lengthMm) {
    new TrackPen(sheet, 1.2)
        .track(lead, always, List.of(new Spot(left, middle), new Spot(left + lengthMm, middle)));
  }

  /** The number of a stop in a circle; white on dark for a stop in use. */
  static void badge(Sheet sheet, Stop stop, Spot at, double radius, double size) {
    String number = Integer.toString(stop.number());
    double fitting = Math.min(size, 1.7 * radius / LetterWidths.ems(number));
    sheet.circle(
        "badge",
        at,
        radius,
        stop.used() ? Sheet.INK : "#fff",
        stop.used() ? Sheet.INK : "#777",
        0.25);
    sheet.text(Hold.MIDDLE, at.x(), at.y(), fitting, stop.used() ? "#fff" : "#444", number);
  }
}
