package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** Pictures of the store, and photos with the cavities marked. */
class PicturesTest {
  private static final String BLOCK_PHOTO = "/vehicle/packer/face/rear-block/photo";
  private static final String FLOOR_PHOTO = "/vehicle/packer/face/floor/photo";

  @TempDir private Path folder;
  private DemoStore demo;
  private Browser browser;

  @BeforeEach
  void open() {
    demo = DemoStore.in(folder);
    browser = new Browser(demo.pages());
  }

  @AfterEach
  void close() {
    demo.close();
  }

  static byte[] picture(int width, int height, int colour) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < Math.min(width, height); i++) {
      image.setRGB(i, i, colour);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private HttpResponse<String> put(String path, FormPosts form, byte[] file) {
    return form.add("who", "Anna").send(demo.pages(), path, "file", "C:\\x\\new one.png", file);
  }

  @Test
  void allPicturesAreListedWithTheirUses() {
    String page = browser.get("/pictures").body();
    Markup.elements(page);
    assertThat(page)
        .contains("rear-block-wire-side.png", "van-plan.png", "rear fuse block, photo of the face")
        .contains("Named but not here", "tow-insert-wire-side.jpg", "evidence")
        .contains(" px, PNG");
  }

  @Test
  void bytesAreServedWithTheirKindAndKeptByTheirHash() {
    String page = browser.get("/pictures").body();
    String href =
        page.replaceFirst("(?s).*?(/pictures/file/rear-block[^\"]*)\".*", "$1")
            .replace("&amp;", "&");
    HttpResponse<byte[]> file = browser.bytes(href);
    assertThat(file.headers().firstValue("Content-Type").orElseThrow()).startsWith("image/png");
    assertThat(file.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable");
    assertThat(file.body())
        .isEqualTo(demo.store().workspaces().content().pictures().get("rear-block-wire-side.png"));
    String tag = file.headers().firstValue("ETag").orElseThrow();
    String bare = href.replaceFirst("\\?.*", "");
    assertThat(browser.bytes(bare).headers().firstValue("Cache-Control").orElseThrow())
        .contains("no-cache");
    assertThat(browser.get(bare, "If-None-Match", tag).statusCode()).isEqualTo(304);
    assertThat(browser.get("/pictures/file/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void picturesArePutInAndReplacedAndTakenBack() {
    HttpResponse<String> added = put("/pictures", FormPosts.empty(), picture(40, 30, 0xff0000));
    assertThat(added.statusCode()).as(added.body()).isEqualTo(303);
    DocumentKey key = new DocumentKey(DocumentKey.PICTURE, "new one.png");
    String first = demo.store().pictures().named(key.id()).orElseThrow();
    assertThat(browser.get("/pictures").body()).contains("new one.png", "40 × 30 px, PNG");
    String path = "/pictures/of/new_20_one_2e_png";
    assertThat(browser.get(path).body()).contains("No document.", "Replace it");
    HttpResponse<String> replaced =
        put(path, FormPosts.empty().add("basedOn", "1"), picture(50, 30, 0x00ff00));
    assertThat(replaced.statusCode()).as(replaced.body()).isEqualTo(303);
    assertThat(demo.number(key)).isEqualTo(2);
    assertThat(browser.get(replaced.headers().firstValue("Location").orElseThrow()).body())
        .contains("Saved as revision 2.", "50 × 30 px");
    HttpResponse<String> undone =
        browser.post("/history/picture/new_20_one_2e_png/undo", "number=2&back=/pictures&who=Anna");
    assertThat(undone.statusCode()).as(undone.body()).isEqualTo(303);
    assertThat(demo.store().pictures().named(key.id())).contains(first);
  }

  @Test
  void whatIsNoPictureIsRefusedInWords() {
    assertThat(put("/pictures", FormPosts.empty(), "GIF89a".getBytes()).body())
        .contains("id=\"file-wrong\"", "neither a PNG nor a JPEG");
    assertThat(put("/pictures", FormPosts.empty(), new byte[9 << 20]).body()).contains("8 MB");
    byte[] cut = java.util.Arrays.copyOf(picture(90, 90, 0xff), 60);
    assertThat(put("/pictures", FormPosts.empty(), cut).body()).contains("damaged or cut off");
    assertThat(put("/pictures", FormPosts.empty(), new byte[0]).body())
        .contains("id=\"file-wrong\"");
    HttpResponse<String> twice =
        put("/pictures", FormPosts.empty().add("name", "van-plan.png"), picture(9, 9, 1));
    assertThat(twice.statusCode()).isEqualTo(422);
    assertThat(twice.body()).contains("id=\"name-wrong\"", "there is a picture of this name");
    assertThat(put("/pictures", FormPosts.empty().add("name", "a.gif"), picture(9, 9, 1)).body())
        .contains("id=\"name-wrong\"");
    // The points of the photo would lie outside a picture so small.
    HttpResponse<String> small =
        put(
            "/pictures/of/rear-block-wire-side_2e_png",
            FormPosts.empty().add("basedOn", "1"),
            picture(20, 20, 1));
    assertThat(small.statusCode()).isEqualTo(422);
    assertThat(small.body()).contains("outside the picture");
  }

  @Test
  void aPhotoIsPutInMarkedAndSaved() {
    HttpResponse<String> added =
        put(FLOOR_PHOTO + "/new", FormPosts.empty().add("side", "wire-side"), picture(400, 300, 1));
    assertThat(added.statusCode()).as(added.body()).isEqualTo(303);
    String next = added.headers().firstValue("Location").orElseThrow();
    assertThat(next).contains("picture=floor-wire-side.png&side=wire-side");
    String page = browser.get(next).body();
    Markup.elements(page.replaceAll("(?s)<svg.*?</svg>(?:.*?</svg>)?", ""));
    assertThat(page).contains("3 more points at least");
    FormPosts form = FormPosts.on(page, "marking");
    form.set("what0", "corner top-left").set("x0", "50").set("y0", "50");
    form.set("what1", "corner top-right").set("x1", "350").set("y1", "50");
    form.set("what2", "corner bottom-left").set("x2", "50").set("y2", "900");
    String outside = browser.post(FLOOR_PHOTO, form.set("step", "preview").encoded()).body();
    assertThat(outside).contains("point-wrong-2", "400 px wide and 300 px high", "value=\"900\"");
    assertThat(browser.post(FLOOR_PHOTO, form.set("step", "save").encoded()).statusCode())
        .isEqualTo(422);
    form.set("y2", "250").set("step", "preview");
    String marked = browser.post(FLOOR_PHOTO, form.encoded()).body();
    assertThat(marked).contains("The face is laid on the photo", "add one more point");
    form.set("side", "mating-side");
    assertThat(browser.post(FLOOR_PHOTO, form.encoded()).body())
        .contains("By its points the photo shows the wire side");
    form.set("side", "wire-side").set("step", "save").set("who", "Anna");
    HttpResponse<String> saved = browser.post(FLOOR_PHOTO, form.encoded());
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).contains("\"file\": \"floor-wire-side.png\"");
    assertThat(browser.get("/vehicle/packer/face/floor").body())
        .contains("Photo and its marks", "id=\"photo\"");
  }

  @Test
  void thePhotoOfAFuseBlockIsThereWithItsPointsAndCanBeThatOfThePart() {
    String page = browser.get(BLOCK_PHOTO).body();
    FormPosts form = FormPosts.on(page, "marking");
    assertThat(form.get("what4")).isEqualTo("cavity F6");
    assertThat(form.get("x0")).isEqualTo("193");
    assertThat(page).contains("The point that fits worst is point");
    String off = browser.post(BLOCK_PHOTO, form.set("x4", "90").encoded()).body();
    assertThat(off).contains("The points don't fit together; look at point");
    form.set("x4", "268").set("of", "part").set("step", "save").set("who", "Anna");
    HttpResponse<String> saved = browser.post(BLOCK_PHOTO, form.encoded());
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
    DocumentKey parts =
        demo.store().documents().newest().stream()
            .map(it -> it.key())
            .filter(it -> it.kind().equals("parts"))
            .findFirst()
            .orElseThrow();
    assertThat(demo.text(parts)).contains("\"file\": \"rear-block-wire-side.png\"");
  }
}
