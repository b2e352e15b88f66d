package org.loomwright.papers.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.job.JobPhoto;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.Pictures;
import org.loomwright.papers.page.Html;

/** The photos of a job, two beside each other. */
final class JobPhotos {
  private static final double PHOTO_WIDTH_MM = 82;
  private static final double PHOTO_HEIGHT_MM = 74;

  private final Fitted fitted;
  private final Pictures pictures;

  JobPhotos(Fitted fitted, Pictures pictures) {
    this.fitted = fitted;
    this.pictures = pictures;
  }

  void write(Html html) {
    html.open("table", "photos");
    List<JobPhoto> photos = fitted.job().photos();
    for (int i = 0; i < photos.size(); i += 2) {
      html.open("tr", "");
      for (int at = i; at < i + 2; at++) {
        html.open("td", "");
        if (at < photos.size()) {
          photo(html, photos.get(at));
        }
        html.close("td");
      }
      html.close("tr");
    }
    html.close("table");
  }

  private void photo(Html html, JobPhoto photo) {
    Optional<Picture> picture = pictures.find(photo.file());
    picture
        .flatMap(it -> PhotoPrint.markup(it, PHOTO_WIDTH_MM, PHOTO_HEIGHT_MM))
        .ifPresentOrElse(
            html::picture,
            () ->
                html.line(
                    "p",
                    "",
                    "The photo "
                        + photo.file()
                        + (picture.isPresent() ? " can't be read." : " is not at hand.")));
    html.line(
        "p",
        "",
        photo.shows().orElse(photo.file())
            + photo.step().map(it -> "\n" + fitted.stepWords(it)).orElse(""));
  }
}
