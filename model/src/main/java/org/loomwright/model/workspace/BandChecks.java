package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.json.Paths;
import org.loomwright.model.vehicle.MeterBand;
import org.loomwright.model.vehicle.Tell;

/**
 * Checks the bands of a measurement: a number on the meter picks one value, or none when it lies
 * between the bands.
 */
final class BandChecks {
  private static final String KEY = "bands";

  private BandChecks() {}

  static void check(Scope scope, Tell tell, List<String> values) {
    if (!tell.how().isReading()) {
      scope.problem(
          tell,
          KEY,
          "",
          "only what is measured has bands; leave 'bands' out, or make 'how' measure-live or"
              + " measure-isolated");
      return;
    }
    for (String key : tell.bands().keySet()) {
      if (!values.contains(key)) {
        scope.problem(
            tell,
            Paths.key(KEY, key),
            key,
            "'" + key + "' is not one of the values" + Nearest.hint(key, "they are", values));
      }
    }
    List<String> missing = values.stream().filter(it -> !tell.bands().containsKey(it)).toList();
    if (!missing.isEmpty()) {
      scope.problem(
          tell,
          KEY,
          "",
          "it has no band for "
              + Nearest.list(missing)
              + "; give one to each value, or leave 'bands' out");
    }
    apart(scope, tell);
  }

  private static void apart(Scope scope, Tell tell) {
    List<Map.Entry<String, MeterBand>> before = new ArrayList<>();
    for (Map.Entry<String, MeterBand> it : tell.bands().entrySet()) {
      MeterBand band = it.getValue();
      for (Map.Entry<String, MeterBand> other : before) {
        if (band.unit().sort() != other.getValue().unit().sort()) {
          scope.problem(
              tell,
              Paths.key(KEY, it.getKey()),
              band.text(),
              "this is a "
                  + band.unit().sort().words()
                  + ", the band of '"
                  + other.getKey()
                  + "' a "
                  + other.getValue().unit().sort().words()
                  + "; one measurement reads one of them");
          break;
        }
        if (band.meets(other.getValue())) {
          scope.problem(
              tell,
              Paths.key(KEY, it.getKey()),
              band.text(),
              "numbers in it also lie in \""
                  + other.getValue().text()
                  + "\" of '"
                  + other.getKey()
                  + "'; leave a gap between the bands");
          break;
        }
      }
      before.add(it);
    }
  }
}
