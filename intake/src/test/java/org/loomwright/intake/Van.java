package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.model.workspace.WorkspaceReader;

/** The demo's van with its parts. */
final class Van {
  private static final Path DEMO = Path.of("../demo");
  private static final String PARTS = text("parts.parts.json");
  private static final Workspace READ = read(text("van.vehicle.json"));

  static final Vehicle VEHICLE = READ.vehicles().get(0);
  static final List<Housing> HOUSINGS = READ.parts().get(0).housings();
  static final Connector SOCKET = VEHICLE.connector("tow-socket").orElseThrow();
  static final Connector FLOOR = VEHICLE.connector("floor").orElseThrow();

  private Van() {}

  static Housing housing(Connector connector) {
    return HOUSINGS.stream()
        .filter(it -> it.id().equals(connector.housing()))
        .findFirst()
        .orElseThrow();
  }

  /** The van as it was before anyone looked into the given cavities of its tow socket. */
  static Vehicle without(Set<String> cavities) {
    return Copies.with(
        VEHICLE,
        SOCKET,
        VEHICLE.circuits().stream()
            .filter(
                it ->
                    it.to().stream()
                        .noneMatch(
                            to ->
                                to instanceof Spot.OfCavity at
                                    && at.connector().equals("tow-socket")
                                    && cavities.contains(at.cavity())))
            .toList());
  }

  /** The vehicle as read again from its text, beside the parts; it must be without problems. */
  static Vehicle again(Vehicle vehicle) {
    return read(DocumentWriter.write(vehicle)).vehicles().get(0);
  }

  private static Workspace read(String vehicle) {
    Read read =
        WorkspaceReader.read(
            List.of(new NamedText("van.json", vehicle), new NamedText("parts.json", PARTS)));
    if (read instanceof Read.Bad bad) {
      assertThat(bad.problems().stream().map(Problem::words).toList()).isEmpty();
    }
    return ((Read.Good) read).workspace();
  }

  private static String text(String file) {
    try {
      return Files.readString(DEMO.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PastedTable table(String text) {
    return table(PastedTable.read(text));
  }

  static PastedTable table(Reading reading) {
    assertThat(reading).isInstanceOf(Reading.Good.class);
    return ((Reading.Good) reading).table();
  }

  static Preview preview(String text, Connector connector, Vehicle vehicle) {
    PastedTable table = table(text);
    ColumnGuess guess = ColumnGuess.of(table, housing(connector), vehicle);
    return Preview.of(table, guess, connector, housing(connector), vehicle);
  }
}
