package org.loomwright.benchmarks;

import java.util.Locale;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The plainest map there can be: places on a circle, a straight line for each lead on each run, all
 * names written where they fall, over whatever lies there.
 */
final class PlainMap {
  private PlainMap() {}

  static String svg(Plan plan, Vehicle vehicle) {
    StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\">");
    for (Run run : vehicle.runs()) {
      double[] from = at(vehicle, run.from());
      double[] to = at(vehicle, run.to());
      int i = 0;
      for (Lead lead : plan.design().leads()) {
        if (lead.runs().contains(run.id())) {
          out.append(
              String.format(
                  Locale.ROOT,
                  "<path d=\"M%.2f,%.2fL%.2f,%.2f\" stroke=\"%s\"/>",
                  from[0] + i,
                  from[1],
                  to[0] + i,
                  to[1],
                  lead.colour().base().word()));
          i++;
        }
      }
    }
    vehicle.places().forEach(it -> text(out, at(vehicle, it.id()), it.name()));
    for (Lead lead : plan.design().leads()) {
      text(out, at(vehicle, lead.a().place()), lead.id() + " " + lead.what());
      text(out, at(vehicle, lead.b().place()), lead.id() + " " + lead.what());
    }
    return out.append("</svg>").toString();
  }

  private static void text(StringBuilder out, double[] at, String words) {
    out.append(
        String.format(Locale.ROOT, "<text x=\"%.2f\" y=\"%.2f\">%s</text>", at[0], at[1], words));
  }

  private static double[] at(Vehicle vehicle, String place) {
    int index = 0;
    while (!vehicle.places().get(index).id().equals(place)) {
      index++;
    }
    double angle = 2 * Math.PI * index / vehicle.places().size();
    return new double[] {85 + 70 * Math.cos(angle), 85 + 70 * Math.sin(angle)};
  }
}
