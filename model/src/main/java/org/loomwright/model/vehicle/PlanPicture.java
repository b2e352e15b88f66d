package org.loomwright.model.vehicle;

import org.loomwright.model.picture.PictureFile;

/**
 * The picture of a vehicle from above.
 *
 * @param file PNG or JPEG beside the documents
 */
public record PlanPicture(String file) implements PictureFile {}
