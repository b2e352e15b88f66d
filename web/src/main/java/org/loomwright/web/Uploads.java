package org.loomwright.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import jakarta.servlet.MultipartConfigElement;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Forms that carry a file. What is larger than any file taken is read past, not kept. */
final class Uploads {
  private static final Logger LOG = LoggerFactory.getLogger(Uploads.class);

  /** So much is read of a form, bytes: its file may be too large and still be refused in words. */
  private static final long LARGEST_FORM = 64L << 20;

  /** So much is read past, bytes, so that the browser gets to see the answer. */
  private static final long LARGEST_PASSED = 512L << 20;

  private static final int IN_MEMORY = 10 << 20;

  private static final String UNREAD = "unread";

  private Uploads() {}

  /** Whether the form of a request can't be read, so that none of its fields may be asked for. */
  static boolean isUnread(Context ctx) {
    return ctx.attribute(UNREAD) != null;
  }

  /** What came with a form. */
  sealed interface Upload {}

  /**
   * A form that could be read.
   *
   * @param fields its fields
   * @param name name of the file; empty for none
   * @param bytes the file, cut off behind what was to be taken of it; empty for none
   */
  record Form(Map<String, List<String>> fields, String name, Optional<byte[]> bytes)
      implements Upload {
    /** The first value of a field, empty when there is none. */
    String field(String field) {
      return fields.getOrDefault(field, List.of()).stream().findFirst().orElse("");
    }
  }

  /**
   * One that could not.
   *
   * @param words what is wrong and what would be right
   */
  record Unread(String words) implements Upload {}

  /**
   * Reads a form.
   *
   * @param field name of the field with the file
   * @param most largest file wanted, bytes; one more is read of larger ones, so that who takes it
   *     sees that it is too large
   */
  static Upload read(Context ctx, String field, int most) throws IOException {
    if (ctx.req().getContentLengthLong() > LARGEST_FORM) {
      readPast(ctx);
      ctx.attribute(UNREAD, true);
      return new Unread(tooLarge(most));
    }
    ctx.req()
        .setAttribute(
            "org.eclipse.jetty.multipartConfig",
            new MultipartConfigElement(
                System.getProperty("java.io.tmpdir"), LARGEST_FORM, LARGEST_FORM, IN_MEMORY));
    Parts parts;
    try {
      UploadedFile file = ctx.uploadedFile(field);
      parts = new Parts(ctx.formParamMap(), Optional.ofNullable(file));
    } catch (Exception broken) {
      // The server below reports damaged and overlong forms with exceptions of every kind.
      LOG.info("A form with a file could not be read.", broken);
      ctx.attribute(UNREAD, true);
      return new Unread("the file did not come over whole; choose it again");
    }
    UploadedFile file = parts.file().orElse(null);
    if (file == null || file.size() == 0 && file.filename().isEmpty()) {
      return new Form(parts.fields(), "", Optional.empty());
    }
    try (InputStream in = file.content()) {
      return new Form(parts.fields(), file.filename(), Optional.of(in.readNBytes(most + 1)));
    }
  }

  private record Parts(Map<String, List<String>> fields, Optional<UploadedFile> file) {}

  private static void readPast(Context ctx) throws IOException {
    byte[] buffer = new byte[1 << 16];
    long left = LARGEST_PASSED;
    try (InputStream in = ctx.req().getInputStream()) {
      for (int n = in.read(buffer); n >= 0 && left > 0; n = in.read(buffer)) {
        left -= n;
      }
    }
  }

  /** What is said of a file that is too large. */
  static String tooLarge(int most) {
    return "the file is too large; at most " + (most >> 20) + " MB are taken";
  }
}
