package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Reads the cells of one row by the meanings of their columns. */
final class RowReader {
  private final Setting setting;
  private final PastedTable.Row row;
  private final List<CellRemark> remarks = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> all = new ArrayList<>();
  private boolean dashed;
  private RowFacts.Filling filling = RowFacts.Filling.WIRE;
  private Optional<String> cavity = Optional.empty();
  private Optional<String> name = Optional.empty();
  private Optional<String> feed = Optional.empty();
  private Optional<WireSize> size = Optional.empty();
  private Optional<Colour> colour = Optional.empty();
  private Optional<String> colourAsSeen = Optional.empty();
  private Optional<Spot> from = Optional.empty();
  private Optional<Spot> to = Optional.empty();
  private Optional<Spot.OfSlot> slot = Optional.empty();
  private Optional<Current> rating = Optional.empty();

  private RowReader(Setting setting, PastedTable.Row row) {
    this.setting = setting;
    this.row = row;
  }

  /** What holds for all rows. */
  record Setting(
      ColumnGuess columns,
      List<SizeUnit> units,
      Connector connector,
      Housing housing,
      Vehicle vehicle,
      FarEnd ends,
      List<Housing> housings) {}

  static RowFacts read(Setting setting, PastedTable.Row row) {
    return new RowReader(setting, row).facts();
  }

  private RowFacts facts() {
    for (ColumnGuess.Column column : setting.columns().columns()) {
      String text = CellText.line(row.text(column.column()));
      if (!text.isEmpty() && column.meaning() != Meaning.LEFT_OUT) {
        cell(column, text);
      }
    }
    cavityPresent();
    if (from.isPresent() && slot.isPresent() && !from.get().equals(slot.get())) {
      notes.add("fuse: " + slot.get().text());
    }
    boolean nothing =
        Stream.of(name, feed, size, colour, from, to, slot, rating).allMatch(Optional::isEmpty);
    boolean read = remarks.stream().noneMatch(CellRemark::problem);
    if (nothing && read && filling == RowFacts.Filling.WIRE) {
      filling = dashed ? RowFacts.Filling.EMPTY : RowFacts.Filling.UNSAID;
    }
    return new RowFacts(
        row.number(),
        cavity,
        filling,
        name,
        feed,
        size,
        colour,
        colourAsSeen,
        from,
        to,
        slot,
        rating,
        note(notes),
        note(all),
        remarks);
  }

  private static Optional<String> note(List<String> notes) {
    return notes.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", notes));
  }

  private void cell(ColumnGuess.Column column, String text) {
    String labelled =
        (column.header().isEmpty() ? column.meaning().words() : CellText.line(column.header()))
            + ": "
            + text;
    if (column.meaning() == Meaning.CAVITY) {
      cavity = CavityText.read(text, setting.housing());
      if (cavity.isEmpty()) {
        problem(column, text, noCavity(text));
      }
      return;
    }
    all.add(column.meaning() == Meaning.NOTE && column.header().isEmpty() ? text : labelled);
    if (EmptyWords.isDash(text)) {
      dashed |= column.meaning() != Meaning.NOTE;
      notes.add(labelled);
      return;
    }
    if (said(text)) {
      notes.add(labelled);
      return;
    }
    switch (column.meaning()) {
      case NAME -> name = Optional.of(text);
      case FEED -> feed = Optional.of(text);
      case SIZE ->
          size = known(column, text, SizeText.read(text, setting.units().get(column.column())));
      case COLOUR -> colour(column, text);
      case FROM -> from = end(column, text);
      case TO -> to = end(column, text);
      case FUSE -> fuse(column, text);
      default -> notes.add(column.header().isEmpty() ? text : labelled);
    }
  }

  private boolean said(String text) {
    if (EmptyWords.isPlugged(text)) {
      filling = RowFacts.Filling.PLUGGED;
    } else if (EmptyWords.isBlocked(text)) {
      filling = RowFacts.Filling.BLOCKED;
    } else if (EmptyWords.isEmpty(text)) {
      filling = filling == RowFacts.Filling.WIRE ? RowFacts.Filling.EMPTY : filling;
    } else {
      return false;
    }
    return true;
  }

  private void colour(ColumnGuess.Column column, String text) {
    colour = known(column, text, ColourText.read(text, setting.vehicle()));
    boolean code = colour.map(it -> !it.text().equals(text.toLowerCase(Locale.ROOT))).orElse(false);
    colourAsSeen = code ? Optional.of(text) : Optional.empty();
  }

  private void fuse(ColumnGuess.Column column, String text) {
    Optional<FuseText> fuse = known(column, text, FuseText.read(text, setting.ends()));
    slot = fuse.flatMap(FuseText::slot);
    rating = fuse.flatMap(FuseText::rating);
  }

  private Optional<Spot> end(ColumnGuess.Column column, String text) {
    Optional<Spot> spot = known(column, text, setting.ends().read(text));
    Optional<String> wrong = spot.flatMap(this::wrongCavity);
    if (wrong.isPresent()) {
      problem(column, text, wrong.get());
      return Optional.empty();
    }
    spot.filter(setting.ends()::isNew)
        .ifPresent(
            it ->
                remark(
                    column,
                    text,
                    CellText.shown(text)
                        + " is not on file; taken as a unit, '"
                        + it.text()
                        + "'"
                        + setting
                            .ends()
                            .like(text)
                            .map(near -> "; on file is '" + near + "'")
                            .orElse("")));
    return spot;
  }

  private Optional<String> wrongCavity(Spot spot) {
    if (!(spot instanceof Spot.OfCavity at)) {
      return Optional.empty();
    }
    String housingId =
        setting.vehicle().connector(at.connector()).map(Connector::housing).orElse("");
    Optional<Housing> far =
        at.connector().equals(setting.connector().id())
            ? Optional.of(setting.housing())
            : setting.housings().stream().filter(it -> it.id().equals(housingId)).findFirst();
    if (far.isEmpty()) {
      return Optional.of(
          "the housing of connector '"
              + at.connector()
              + "' is not at hand, so its cavities can't be checked");
    }
    Optional<Cavity> cavity = far.get().cavity(at.cavity());
    if (cavity.isEmpty()) {
      return Optional.of(
          "connector '"
              + at.connector()
              + "' has no cavity '"
              + at.cavity()
              + "'; it has "
              + Nearest.list(far.get().cavities().stream().map(Cavity::number).toList()));
    }
    return cavity.get().closed()
        ? Optional.of(
            "cavity '" + at.cavity() + "' of connector '" + at.connector() + "' is moulded closed")
        : Optional.empty();
  }

  private void cavityPresent() {
    Optional<ColumnGuess.Column> column = setting.columns().column(Meaning.CAVITY);
    if (column.isPresent() && row.text(column.get().column()).isBlank()) {
      problem(
          column.get(),
          "",
          "the row has no cavity number; write it, or clear the row if it is only a heading");
    }
  }

  private String noCavity(String text) {
    List<String> numbers = setting.housing().cavities().stream().map(Cavity::number).toList();
    return setting.connector().name()
        + " has no cavity "
        + CellText.shown(text)
        + Nearest.fullHint(text, "its cavities are", numbers);
  }

  private <T> Optional<T> known(ColumnGuess.Column column, String text, Fact<T> fact) {
    if (fact instanceof Fact.Wrong<T> wrong) {
      problem(column, text, wrong.message());
    }
    return fact.known();
  }

  private void problem(ColumnGuess.Column column, String text, String message) {
    remarks.add(new CellRemark(row.number(), column.column(), text, message, true));
  }

  private void remark(ColumnGuess.Column column, String text, String message) {
    remarks.add(new CellRemark(row.number(), column.column(), text, message, false));
  }
}
