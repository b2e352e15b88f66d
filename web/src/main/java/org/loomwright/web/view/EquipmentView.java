package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.quantity.Display;

/** What a pin of a piece of equipment needs, in words. */
public final class EquipmentView {
  private EquipmentView() {}

  /** Kind of the need, with the feed. */
  public static String kind(Pin pin) {
    return pin.need()
        .map(it -> Told.words(it.kind()) + it.feed().map(feed -> " " + feed).orElse(""))
        .orElse("not used");
  }

  /** Its currents. */
  public static String current(Pin pin) {
    return pin.need()
        .map(
            it ->
                it.continuous().text()
                    + it.peak()
                        .map(
                            peak ->
                                ", peak "
                                    + peak.text()
                                    + it.peakTime().map(time -> " for " + time.text()).orElse(""))
                        .orElse("")
                    + it.duty().map(duty -> ", on " + duty.text() + " of the time").orElse(""))
        .orElse("");
  }

  /** Everything else it asks for. */
  public static String rest(Pin pin, Display units) {
    return pin.need().map(it -> rest(it, units)).orElse("");
  }

  private static String rest(Need it, Display units) {
    List<String> words = new ArrayList<>();
    add(words, "at least ", it.minimumVoltage().map(v -> v.text() + " at the pin"));
    it.draws().ifPresent(form -> words.add("draws constant " + Told.words(form)));
    add(words, "returns by ", it.returnsBy());
    if (it.ownFuse()) {
      words.add("a fuse of its own");
    }
    add(words, "fuse at most ", it.fuseAtMost().map(a -> a.text()));
    add(words, "wire of at least ", it.leastArea().map(units::show));
    if (!it.shareWith().isEmpty()) {
      words.add("may share with " + Told.list(it.shareWith()));
    }
    if (!it.apartFrom().isEmpty()) {
      words.add("apart from " + Told.list(it.apartFrom()));
    }
    add(words, "signal of ", it.standard());
    return String.join("; ", words);
  }

  private static void add(List<String> words, String before, Optional<String> word) {
    word.ifPresent(it -> words.add(before + it));
  }
}
