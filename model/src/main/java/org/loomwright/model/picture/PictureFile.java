package org.loomwright.model.picture;

/** A part of a document that names a picture of the workspace. */
public interface PictureFile {
  /** Name of the file, relative to the workspace's folder, with "/" before a sub-folder's file. */
  String file();
}
