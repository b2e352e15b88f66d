package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.Proof;

/**
 * A proof with the builds on which it fails.
 *
 * @param proof the proof
 * @param failing the possible builds on which some obligation fails, none when it is proven; absent
 *     when the guide can't be walked, so that nothing is shown of any build
 */
public record Judged(Proof proof, Optional<FailingBuilds> failing) {}
