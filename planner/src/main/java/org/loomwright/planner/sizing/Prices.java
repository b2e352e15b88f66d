package org.loomwright.planner.sizing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.loomwright.model.design.Landing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.rules.Rules;

/** Prices of parts and minutes. */
public final class Prices {
  private final Parts parts;
  private final Rules rules;

  /** Prices of an order. */
  public Prices(KitOrder order) {
    this.parts = order.parts();
    this.rules = order.rules();
  }

  /** Currency of the shop. */
  public String currency() {
    return rules.hourlyRate().value().currency();
  }

  /** Price of some minutes of work. */
  public double work(double minutes) {
    return minutes / 60 * rules.hourlyRate().value().amount().doubleValue();
  }

  /** Minutes of a time. */
  public static double minutes(TimeSpan time) {
    return time.seconds() / 60;
  }

  /** Price of the parts of an end. */
  public double parts(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return terminal(in.terminal()) + in.seal().map(this::seal).orElse(0.0);
    } else if (landing instanceof Landing.InHousing in) {
      return terminal(in.terminal()) + in.seal().map(this::seal).orElse(0.0);
    } else if (landing instanceof Landing.InSlot in) {
      return terminal(in.terminal());
    } else if (landing instanceof Landing.OnGround on) {
      return parts.rings().stream()
          .filter(it -> it.id().equals(on.ring()))
          .mapToDouble(it -> amount(it.price()))
          .sum();
    } else if (landing instanceof Landing.IntoCircuit into) {
      return splice(into.splice());
    } else if (landing instanceof Landing.InJoint in) {
      return splice(in.splice());
    }
    Landing.Parked parked = (Landing.Parked) landing;
    return parts.sundries().stream()
        .filter(it -> it.id().equals(parked.cap()))
        .mapToDouble(it -> amount(it.price()))
        .sum();
  }

  /** Bench minutes to make an end. */
  public double benchMinutes(Landing landing) {
    double crimp = minutes(rules.crimpTime().value());
    if (landing instanceof Landing.InHousing) {
      return crimp + minutes(rules.insertTime().value());
    }
    if (landing instanceof Landing.InJoint) {
      // The splice itself is counted once with its joint.
      return 0;
    }
    return landing instanceof Landing.IntoCircuit ? 0 : crimp;
  }

  /** Minutes in the vehicle to land an end, openings not counted. */
  public double vehicleMinutes(Landing landing) {
    if (landing instanceof Landing.IntoCircuit) {
      return minutes(rules.spliceTime().value());
    }
    return landing instanceof Landing.InHousing || landing instanceof Landing.InJoint
        ? 0
        : minutes(rules.insertTime().value());
  }

  /** A sum of money as a number, for cost functions only. */
  public static double amount(Money money) {
    return money.amount().doubleValue();
  }

  /** An amount rounded to cents, half up. */
  public static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP);
  }

  private double terminal(String id) {
    return parts.terminal(id).map(it -> amount(it.price())).orElse(0.0);
  }

  private double seal(String id) {
    return parts.seals().stream()
        .filter(it -> it.id().equals(id))
        .mapToDouble(it -> amount(it.price()))
        .sum();
  }

  private double splice(String id) {
    return parts.splices().stream()
        .filter(it -> it.id().equals(id))
        .mapToDouble(it -> amount(it.price()))
        .sum();
  }
}
