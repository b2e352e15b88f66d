package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pinout from its text to a new revision of the vehicle. */
class PasteTest {
  static final String SOCKET = "/vehicle/packer/face/tow-socket";
  static final String PASTE = SOCKET + "/paste";

  /** Cavity 9 with another size, a colour misspelt, a new wire, one on file, a cavity too many. */
  static final String TABLE =
      """
      Tow socket, from the service table
      Cavity\tColour\tSize\tFunction\tFrom
      9\tred/green\t2.5 mm²\tpermanent feed\trear-block F7
      11\trde\t1.5 mm²\tside lamp\tbody-computer
      12\tblue\t1.5 mm²\t<b>spare</b> "lamp"\tbody-computer
      3\tbrown\t2.5 mm²\tlamp return\trear-ground
      14\tred\t1 mm²\tsiren\tbody-computer
      """;

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

  private HttpResponse<String> read(String text) {
    return FormPosts.empty().add("text", text).send(demo.pages(), PASTE, "file", "", new byte[0]);
  }

  private FormPosts preview(String text) {
    HttpResponse<String> page = read(text);
    assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
    Markup.elements(page.body());
    return FormPosts.on(page.body(), "preview").set("present", "tow-prep = yes");
  }

  private String again(FormPosts form) {
    HttpResponse<String> page = browser.post(PASTE, form.set("step", "preview").encoded());
    assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
    return page.body();
  }

  private HttpResponse<String> accept(FormPosts form) {
    return browser.post(PASTE, form.set("step", "accept").set("who", "Anna").encoded());
  }

  @Test
  void everyProblemIsMarkedAtItsCellAndNothingIsSaved() {
    String page = again(preview(TABLE));
    assertThat(page)
        .contains("1 new, 2 change what is on file, 2 have a problem")
        .contains("2 passed over")
        .containsPattern("aria-invalid=\"true\" aria-describedby=\"s-4-1-0\"")
        .contains("id=\"s-4-1-0\"", "did you mean")
        .containsPattern("id=\"c-7-0\" value=\"14\"")
        .contains("on file</span> 4 mm²", "pasted</span> 2.5 mm²")
        .contains("&lt;b>spare&lt;/b>")
        .doesNotContain("<b>spare")
        .contains("Row 5: new circuit", "Row 3: changed circuit");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void correctedCellsAreJudgedAnewAndTakenAtOnce() {
    FormPosts form = FormPosts.on(again(preview(TABLE)), "preview");
    assertThat(form.get("ticked")).isEqualTo("3 5 6");
    String page = again(form.set("c-4-1", "red").set("c-7-0", ""));
    assertThat(page).contains("corrected; was “rde”", "1 has a problem", "2 new");
    FormPosts next = FormPosts.on(page, "preview");
    assertThat(next.get("ticked")).isEqualTo("3 4 5 6");
    // A row with nothing left in it is passed over, and can be filled again.
    FormPosts cleared = next;
    for (int column = 0; column < 5; column++) {
      cleared = cleared.set("c-7-" + column, "");
    }
    String clear = again(cleared);
    assertThat(clear).contains("You cleared it.", "3 passed over").doesNotContain("has a problem");
    assertThat(again(FormPosts.on(clear, "preview").set("c-7-0", "14"))).contains("has a problem");
  }

  @Test
  void acceptedRowsAreANewRevisionWithTheirEvidence() {
    FormPosts form = FormPosts.on(again(preview(TABLE)), "preview");
    HttpResponse<String> saved =
        accept(form.set("by", "Ben").set("when", "2026-03-04").set("note", "tow table, sheet 2"));
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(saved.headers().firstValue("Location")).contains(SOCKET + "?done=vehicle.packer.2");
    assertThat(demo.text(DemoStore.VAN))
        .contains(
            "\"cavity tow-socket 12\"", "tow table, sheet 2", "2026-03-04", "\"by\": \"Ben\"");
    assertThat(browser.get(SOCKET + "?done=vehicle.packer.2").body())
        .contains("Saved as revision 2.", ">Undo<", "&lt;b&gt;spare")
        .doesNotContainIgnoringCase("<b>spare");
    // The same paste again is all on file.
    String again = again(preview(TABLE));
    assertThat(again).doesNotContain(" new,").doesNotContain("change what");
    HttpResponse<String> same = accept(FormPosts.on(again, "preview"));
    assertThat(same.headers().firstValue("Location"))
        .contains(SOCKET + "?done=vehicle.packer.same");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(2);
  }

  @Test
  void rowsAreTakenOrLeftAsSaid() {
    FormPosts form = FormPosts.on(again(preview(TABLE)), "preview");
    String page = again(form.without("take", "5").add("take", "4"));
    assertThat(page).contains("Row 4: cavity 11").doesNotContain("Row 5: new circuit");
    FormPosts next = FormPosts.on(page, "preview");
    assertThat(next.get("chosen")).isEqualTo("4+ 5-");
    assertThat(accept(next).statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).contains("rde").doesNotContain("\"cavity tow-socket 12\"");
  }

  @Test
  void whatOthersSavedMeanwhileIsKept() {
    FormPosts form = FormPosts.on(again(preview(TABLE)), "preview");
    demo.edit(DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"11.7 V\"", "Ben");
    assertThat(again(form)).contains("Ben has saved the vehicle since (revision 2)");
    assertThat(accept(form).statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN))
        .contains("\"supplyLowest\": \"11.7 V\"", "\"cavity tow-socket 12\"");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(3);
  }

  @Test
  void meaningsOfColumnsCanBeCorrected() {
    FormPosts form = preview("9\tred/green\tx\n1\tblue/white\ty\n");
    assertThat(form.get("m0")).isEqualTo("CAVITY");
    String page = again(form.set("m1", "NOTE").set("m2", "NAME"));
    FormPosts next = FormPosts.on(page, "preview");
    assertThat(next.get("m1")).isEqualTo("NOTE");
    assertThat(next.get("m2")).isEqualTo("NAME");
    assertThat(page).contains("You said so");
    // The newest word counts where a meaning can stand only once.
    FormPosts moved = FormPosts.on(again(next.set("m2", "CAVITY")), "preview");
    assertThat(moved.get("m0")).isEqualTo("NOTE");
    FormPosts back = FormPosts.on(again(moved.set("m0", "CAVITY")), "preview");
    assertThat(back.get("m0")).isEqualTo("CAVITY");
    assertThat(back.get("m2")).isEqualTo("NOTE");
    String without = again(back.set("m0", "LEFT_OUT"));
    assertThat(without).contains("no column is the cavity number", "Accept 0 rows");
  }

  @Test
  void fieldsBesideTheTableAreCheckedAndKept() {
    FormPosts form = preview(TABLE).set("present", "tow-prep is yes").set("far", "somewhere");
    String page = again(form.set("header", "99").set("when", "3026-01-01").set("note", "a<b"));
    assertThat(page)
        .contains("id=\"present-wrong\"", "id=\"far-wrong\"", "id=\"header-wrong\"")
        .contains("id=\"when-wrong\"", "value=\"tow-prep is yes\"", "value=\"a&lt;b\"");
    HttpResponse<String> refused = accept(FormPosts.on(page, "preview"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("put right the fields that are marked");
    assertThat(again(preview(TABLE).set("present", "towing = yes")))
        .contains("there is no trait 'towing'");
    HttpResponse<String> unnamed =
        browser.post(PASTE, preview(TABLE).set("step", "accept").set("who", "").encoded());
    assertThat(unnamed.statusCode()).isEqualTo(422);
    assertThat(unnamed.body()).contains("write your name");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void aFileOffersItsSheets() {
    byte[] file =
        book(
            it -> {
              it.newWorksheet("Empty");
              fill(it.newWorksheet("Front & rear"), "Cavity", "Colour", "12", "blue");
              fill(it.newWorksheet("Socket"), "Pin", "Color", "1", "rde");
            });
    HttpResponse<String> page =
        FormPosts.empty().add("text", "").send(demo.pages(), PASTE, "file", "a.xlsx", file);
    assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
    FormPosts form = FormPosts.on(page.body(), "preview");
    assertThat(page.body()).contains("Front &amp; rear", ">Socket<", "a spreadsheet file");
    String other = again(form.set("sheet", "1"));
    assertThat(other).contains("Pin", "did you mean");
    String text = browser.post(PASTE, form.set("step", "text").encoded()).body();
    assertThat(text).contains("Pin\tColor\n1\trde");
  }

  @Test
  void whatCannotBeReadIsRefusedAtItsFieldAndTheTextIsKept() {
    HttpResponse<String> nothing = read("  \n ");
    assertThat(nothing.statusCode()).isEqualTo(422);
    assertThat(nothing.body()).contains("id=\"text-wrong\"", "there is nothing in it");
    FormPosts form = FormPosts.empty().add("text", "");
    byte[] noBook = "not a book".getBytes(StandardCharsets.UTF_8);
    assertThat(form.send(demo.pages(), PASTE, "file", "a.xlsx", noBook).body())
        .contains("id=\"file-wrong\"", "not an XLSX file");
    HttpResponse<String> both =
        FormPosts.empty()
            .add("text", "1\t<i>red")
            .send(demo.pages(), PASTE, "file", "a.xlsx", noBook);
    assertThat(both.statusCode()).isEqualTo(422);
    assertThat(both.body()).contains("there is a text as well", "1\t&lt;i&gt;red");
    byte[] giant = new byte[9 << 20];
    giant[0] = 'P';
    giant[1] = 'K';
    assertThat(form.send(demo.pages(), PASTE, "file", "a.xlsx", giant).body())
        .contains("more than 8 MB");
    assertThat(form.send(demo.pages(), PASTE, "file", "a.xlsx", new byte[70 << 20]).body())
        .contains("the file is too large; at most 8 MB are taken");
    assertThat(read("x\t".repeat(1_100_000)).body()).contains("at most 2000000 are read");
    String damaged = preview(TABLE).set("table", "TAB\nr\tx").set("step", "accept").encoded();
    assertThat(browser.post(PASTE, damaged).statusCode()).isEqualTo(422);
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void otherAddressesAreNotThere() {
    assertThat(browser.get(PASTE).statusCode()).isEqualTo(200);
    assertThat(browser.get("/vehicle/packer/face/nowhere/paste").statusCode()).isEqualTo(404);
    assertThat(browser.get("/vehicle/other/face/floor/paste").statusCode()).isEqualTo(404);
    assertThat(browser.get(SOCKET).body()).contains("href=\"" + PASTE + "\"");
  }

  private interface Fill {
    void fill(Workbook book) throws IOException;
  }

  private static void fill(Worksheet sheet, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      sheet.value(i / 2, i % 2, cells[i]);
    }
  }

  private static byte[] book(Fill fill) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream to = out) {
      Workbook book = new Workbook(to, "test", "1.0");
      fill.fill(book);
      book.finish();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
