package org.loomwright.papers.job;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Locale;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004), drawn for paper. */
final class QrCode {
  /** Width of the blank border, in modules; the standard asks for four. */
  private static final int BORDER = 4;

  private QrCode() {}

  /**
   * The code as a drawing, black on white with its border.
   *
   * @param sideMm side of the square, border included
   * @throws IllegalArgumentException when the text is longer than any code holds
   */
  static String svg(String text, double sideMm) {
    BitMatrix code = matrix(text);
    int size = code.getWidth();
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        if (code.get(x, y)) {
          int end = x;
          while (end + 1 < size && code.get(end + 1, y)) {
            end++;
          }
          // A row of dark modules is one piece, so that no hairline shows between them.
          path.append(
              String.format(Locale.ROOT, "M%d %dh%dv1h-%dz", x, y, end - x + 1, end - x + 1));
          x = end;
        }
      }
    }
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.1fmm\" height=\"%.1fmm\" viewBox=\"0 0"
            + " %d %d\"><rect width=\"%d\" height=\"%d\" fill=\"#fff\"/><path d=\"%s\""
            + " fill=\"#000\"/></svg>",
        sideMm,
        sideMm,
        size,
        size,
        size,
        size,
        path);
  }

  private static BitMatrix matrix(String text) {
    try {
      return new QRCodeWriter()
          .encode(
              text,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.CHARACTER_SET,
                  "UTF-8",
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.M,
                  EncodeHintType.MARGIN,
                  BORDER));
    } catch (WriterException e) {
      throw new IllegalArgumentException("the text is too long for a code that can be scanned", e);
    }
  }
}
