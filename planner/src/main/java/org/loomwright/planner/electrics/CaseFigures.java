package org.loomwright.planner.electrics;

import java.math.BigInteger;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.physics.network.Solved;
import org.loomwright.planner.need.NeedAt;

/**
 * A joint case, solved.
 *
 * @param cases case ids
 * @param needs figures by need
 * @param leadsA highest current in each added lead by its name, A
 * @param findings back-feed, nets fed twice, offset sensor grounds, one sentence each
 * @param unsolved states without an operating point and parts that float, one sentence each
 * @param tried load states solved
 * @param possible load states there are
 * @param proven whether every figure is proven to be the worst of all states
 * @param faults what an independent check of the solved states found wrong
 * @param checked states checked that way
 * @param states solved states to show: all loads on at lowest and at highest supply
 */
public record CaseFigures(
    List<String> cases,
    Map<NeedAt, NeedFigures> needs,
    Map<String, Double> leadsA,
    List<String> findings,
    List<String> unsolved,
    int tried,
    BigInteger possible,
    boolean proven,
    List<String> faults,
    int checked,
    List<Solved> states) {
  /** Copies, keeping the order. */
  public CaseFigures {
    cases = List.copyOf(cases);
    needs = Collections.unmodifiableMap(new LinkedHashMap<>(needs));
    leadsA = Collections.unmodifiableMap(new LinkedHashMap<>(leadsA));
    findings = List.copyOf(findings);
    unsolved = List.copyOf(unsolved);
    faults = List.copyOf(faults);
    states = List.copyOf(states);
  }
}
