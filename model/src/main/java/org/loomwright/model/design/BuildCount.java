package org.loomwright.model.design;

import java.math.BigInteger;

/**
 * How the builds were split.
 *
 * @param possible possible builds of the vehicle
 * @param traits traits, unknown facts included
 * @param components sets of needs planned apart
 * @param groups groups of builds told apart, over all components
 */
public record BuildCount(BigInteger possible, int traits, int components, int groups) {}
