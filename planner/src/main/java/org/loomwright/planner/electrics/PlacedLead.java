package org.loomwright.planner.electrics;

import org.loomwright.physics.wire.Conductor;
import org.loomwright.planner.ways.LeadDraft;

/**
 * An added lead as one case lands it.
 *
 * @param name name in figures, e.g. "L3"
 * @param draft its ends in this case
 * @param conductor its conductor
 * @param lengthM finished length, m
 * @param conductorC temperature of its conductor, °C
 * @param a terminal, ring or splice at end a
 * @param b the same at end b
 */
public record PlacedLead(
    String name,
    LeadDraft draft,
    Conductor conductor,
    double lengthM,
    double conductorC,
    Ohms a,
    Ohms b) {}
