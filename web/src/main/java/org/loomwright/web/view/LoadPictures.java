package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.chart.LoadProfile;
import org.loomwright.drawing.chart.LoadProfiles;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;

/** The loads of a plug as pictures, one scale for all its pins. */
public final class LoadPictures {
  private static final double WIDE_MM = 150;
  private static final double NARROW_MM = 82;

  private LoadPictures() {}

  /** Pictures for a desk and a phone; empty when no pin needs anything. */
  public static String of(Plug plug) {
    List<LoadProfile> loads =
        plug.pins().stream()
            .flatMap(pin -> pin.need().map(need -> profile(pin, need)).stream())
            .toList();
    if (loads.isEmpty()) {
      return "";
    }
    String title = "loads of the pins of " + plug.name();
    return "<div class=\"picture for-wide\">"
        + flexible(LoadProfiles.svg(title, loads, WIDE_MM, Lettering.fitted()))
        + "</div><div class=\"picture for-narrow\">"
        + flexible(LoadProfiles.svg(title, loads, NARROW_MM, Lettering.fitted()))
        + "</div>";
  }

  private static String flexible(String svg) {
    return svg.replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\"", "class=\"fills\"");
  }

  private static LoadProfile profile(Pin pin, Need need) {
    return new LoadProfile(
        pin.cavity() + " " + pin.name(),
        words(need),
        need.continuous().amperes(),
        need.peak().map(it -> OptionalDouble.of(it.amperes())).orElseGet(OptionalDouble::empty),
        need.peakTime().map(it -> it.text()).orElse(""),
        need.duty().map(it -> Math.max(0.01, Math.min(1, it.fraction()))).orElse(1.0));
  }

  private static String words(Need need) {
    List<String> words = new ArrayList<>();
    words.add(need.continuous().text() + need.duty().map(it -> " for " + it.text()).orElse(" always"));
    need.peak()
        .ifPresent(
            it ->
                words.add(
                    "peak "
                        + it.text()
                        + need.peakTime().map(time -> " for " + time.text()).orElse("")));
    if (need.ownFuse()) {
      words.add("fuse of its own");
    } else if (!need.shareWith().isEmpty()) {
      words.add("may share with " + Told.list(need.shareWith()));
    } else if (need.kind() == NeedKind.SUPPLY) {
      words.add("no fuse of its own asked for");
    }
    need.minimumVoltage().ifPresent(it -> words.add("at least " + it.text()));
    return String.join("; ", words);
  }
}
