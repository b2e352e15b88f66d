package org.loomwright.papers.job;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.loomwright.model.job.Job;
import org.loomwright.papers.words.Names;

/** Papers of jobs of the demo's kits, and what can be read in them. */
final class JobPdf {
  private JobPdf() {}

  static byte[] asFitted(Job job) throws IOException {
    Names names = DemoJobs.plan(job);
    return AsFitted.pdf(job, names.order(), names.plan(), DemoJobs.pictures());
  }

  static byte[] sheet(Job job) throws IOException {
    Names names = DemoJobs.plan(job);
    return DisclosureSheet.pdf(job, names.order(), names.plan());
  }

  /** All words in the order in which they were set, on one line. */
  static String words(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      return new PDFTextStripper().getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
  }

  static int pages(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      return document.getNumberOfPages();
    }
  }
}
