package org.loomwright.model.finding;

import java.util.Optional;
import org.loomwright.model.picture.PictureFile;

/**
 * A photo taken on the vehicle.
 *
 * @param file name of a PNG or JPEG file in the workspace's folder, "sub-folder/name" below it
 * @param shows what it shows
 */
public record FindingPhoto(String file, Optional<String> shows) implements PictureFile {}
