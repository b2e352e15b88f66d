package org.loomwright.model.vehicle;

import java.util.Optional;

/**
 * A point of a face found in a photo: the centre of a cavity or a corner.
 *
 * @param cavity number of the cavity whose centre it is
 * @param corner corner of the face, as on file: wire side, latch up; instead of a cavity
 * @param x where it is in the photo, px from the left
 * @param y where it is in the photo, px from the top
 */
public record PhotoPoint(Optional<String> cavity, Optional<FaceCorner> corner, int x, int y) {}
