package org.loomwright.planner.sizing;

import org.loomwright.physics.protection.Fuse;

/**
 * What a wire has to bear.
 *
 * @param ground whether it is a ground; its fuse is then that of the feed it returns
 * @param load what it carries
 * @param fuse fuse that protects it, or that protects the feed whose fault current it returns
 * @param lengthMm its length
 * @param restMm length of the rest of the loop in the same size, for the fault current
 * @param ambientC highest ambient on its way
 * @param wires added wires in its thickest bundle, itself included
 * @param leastAreaMm2 mechanical minimum, or what a standard asks for
 * @param dropV most voltage it may lose
 * @param supplyV nominal supply
 */
public record WireNeed(
    boolean ground,
    Load load,
    Fuse fuse,
    double lengthMm,
    double restMm,
    double ambientC,
    int wires,
    double leastAreaMm2,
    double dropV,
    double supplyV) {}
