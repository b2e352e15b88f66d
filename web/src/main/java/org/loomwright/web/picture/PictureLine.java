package org.loomwright.web.picture;

import java.util.List;
import java.util.Optional;
import org.loomwright.store.Blob;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.web.shop.Href;

/**
 * A picture by its file name.
 *
 * @param name file name as documents write it
 * @param revision who put it there, and when
 * @param blob what is known of the picture
 * @param uses where documents use it
 */
public record PictureLine(String name, Revision revision, Blob blob, List<PictureUses.Use> uses) {
  public PictureLine {
    uses = List.copyOf(uses);
  }

  /** All pictures of a store, by name. */
  public static List<PictureLine> all(Store store, PictureUses uses) {
    return store.documents().newest().stream()
        .filter(it -> it.key().kind().equals(DocumentKey.PICTURE))
        .flatMap(it -> of(store, it, uses).stream())
        .toList();
  }

  /** The picture that a part of an address names. */
  public static Optional<PictureLine> find(Store store, String part, PictureUses uses) {
    return store.documents().newest().stream()
        .filter(it -> it.key().kind().equals(DocumentKey.PICTURE))
        .filter(it -> Href.part(it.key().id()).equals(part))
        .findFirst()
        .flatMap(it -> of(store, it, uses));
  }

  private static Optional<PictureLine> of(Store store, Revision it, PictureUses uses) {
    String name = it.key().id();
    return store
        .pictures()
        .named(name)
        .flatMap(store.pictures()::find)
        .map(blob -> new PictureLine(name, it, blob, uses.of(name)));
  }

  /** Address of its bytes. */
  public String file() {
    return Href.pictureFile(name, blob.hash());
  }

  /** Size and kind in words. */
  public String size() {
    return blob.widthPx()
        + " × "
        + blob.heightPx()
        + " px, "
        + (blob.mediaType().endsWith("png") ? "PNG" : "JPEG");
  }
}
