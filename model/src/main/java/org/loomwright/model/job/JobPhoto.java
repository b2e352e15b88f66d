package org.loomwright.model.job;

import java.util.Optional;
import org.loomwright.model.picture.PictureFile;

/**
 * A photo taken on the vehicle.
 *
 * @param file name of a PNG or JPEG file in the workspace's folder, "sub-folder/name" below it
 * @param shows what it shows
 * @param step id of the step it was taken at
 */
public record JobPhoto(String file, Optional<String> shows, Optional<String> step)
    implements PictureFile {}
