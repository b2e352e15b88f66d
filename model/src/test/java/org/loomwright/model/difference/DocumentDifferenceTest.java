package org.loomwright.model.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.json.JsonText;
import tools.jackson.databind.JsonNode;

/** Differences in the words a shop owner would use. */
class DocumentDifferenceTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"runs":[{"id":"sill","length":"820 mm"}]} | {"runs":[{"id":"sill","length":"900 mm"}]} | run sill: length was 820 mm, is 900 mm
          {"runs":[{"id":"sill","length":"1 m"}]} | {"runs":[{"id":"sill","length":"1000 mm"}]} | run sill: length written as 1000 mm, was 1 m (the same value)
          {"runs":[{"id":"sill","follows":"the sill"}]} | {"runs":[{"id":"sill","follows":"the loom, left side"}]} | run sill: follows was the sill, is "the loom, left side"
          {"runs":[{"id":"a","from":"x","to":"y","length":"1 m"}]} | {"runs":[]} | run a taken out
          {"runs":[]} | {"runs":[{"id":"a","from":"x","to":"y","length":"1 m"}]} | run a added (x to y, 1 m)
          {"runs":[{"id":"a","length":"1 m"}]} | {"runs":[{"id":"b","length":"1 m"}]} | run a is now called b
          {"circuits":[]} | {"circuits":[{"id":"heater-feed","from":"slot rear-block F7","to":["cavity floor 3"],"wire":"2.5 mm²","colour":"red"}]} | circuit heater-feed added (rear-block F7 to floor 3, 2.5 mm², red)
          {"traits":[{"id":"tow-prep","values":[{"id":"yes","share":"24 %"}]}]} | {"traits":[{"id":"tow-prep","values":[{"id":"yes","share":"26 %"}]}]} | trait tow-prep: value yes: share was 24 %, is 26 %
          {"places":[{"id":"rear-floor"},{"id":"x"}]} | {"places":[{"id":"x"}]} | place rear-floor taken out
          {"places":[{"id":"x"}]} | {"places":[{"id":"x","wet":true}]} | place x is now wet
          {"places":[{"id":"x","wet":true}]} | {"places":[{"id":"x","wet":false}]} | place x is no longer wet
          {"places":[{"id":"x"}]} | {"places":[{"id":"x","wet":false}]} | place x: wet: no, as before, now written another way
          {"runs":[{"id":"a"}]} | {"runs":[{"id":"a","evidence":{"how":"measured","when":"2025-04-02","by":"M. Orrin"}}]} | run a: evidence added: measured, 2025-04-02, M. Orrin
          {"runs":[{"id":"a","restraint":false}]} | {"runs":[{"id":"a","restraint":true}]} | run a: restraint: was no, is yes
          {"fuseBlocks":[{"id":"rear","sections":[{"id":"B","fedWhen":"never"}]}]} | {"fuseBlocks":[{"id":"rear","sections":[{"id":"B","fedWhen":"x = y"}]}]} | fuse block rear: section B: fed when: was never, is x = y
          {"cutRounding":{"value":"10 mm","source":"a book"}} | {"cutRounding":{"value":"5 mm","source":"a book"}} | cut rounding was 10 mm, is 5 mm
          {"openings":[{"id":"flap","tools":["pick"]}]} | {"openings":[{"id":"flap","tools":["pick","lamp"]}]} | opening flap: tools: lamp added
          {"openings":[{"id":"flap","tools":["pick"]}]} | {"openings":[{"id":"flap","tools":["lamp"]}]} | opening flap: tools: lamp instead of pick
          {"tools":["pick","lamp"]} | {"tools":["lamp","pick"]} | tools: in another order: was pick, lamp, is lamp, pick
          {"runs":[{"id":"a"},{"id":"b"},{"id":"c"}]} | {"runs":[{"id":"c"},{"id":"a"},{"id":"b"}]} | run c moved: now first
          {"runs":[{"id":"a"},{"id":"b"},{"id":"c"}]} | {"runs":[{"id":"b"},{"id":"c"},{"id":"a"}]} | run a moved: now behind run c
          {"rules":[{"exclude":"a = b","reason":"so"}]} | {"rules":[{"exclude":"a = c","reason":"so"}]} | rule 1: exclude: was a = b, is a = c
          {"name":"van"} | {"name":"van "} | name: only spaces or signs that can't be seen changed in "van"
          {"name":"1"} | {"name":1} | name was text 1, is the number 1
          {} | {"wishes":[{"wish":"forbid","way":"w:1"}]} | wish added (forbid w:1)
          {"designedAgainst":{"van":"4"}} | {"designedAgainst":{"van":"5"}} | designed against: van was 4, is 5
          """)
  void saysItAsAShopOwnerWould(String before, String after, String words) {
    assertThat(DocumentDifference.between(tree(before), tree(after)))
        .extracting(Difference::words)
        .containsExactly(words);
  }

  @Test
  void theText1AndTheNumber1AreTwoCavities() {
    assertThat(
            DocumentDifference.between(
                tree("{\"cavities\":[{\"cavity\":\"1\",\"x\":\"a\"},{\"cavity\":\"2\"}]}"),
                tree("{\"cavities\":[{\"cavity\":1,\"x\":\"b\"},{\"cavity\":\"2\"}]}")))
        .extracting(Difference::words)
        .containsExactly("cavity 1 (as text) taken out", "cavity 1 (as a number) added (x b)");
  }

  @Test
  void longTextsAreCutToWhereTheyPart() {
    String start = "The seal plug sits deep. ".repeat(8);
    List<Difference> found =
        DocumentDifference.between(
            tree("{\"note\":\"" + start + "Pull it.\"}"),
            tree("{\"note\":\"" + start + "Leave it.\"}"));
    assertThat(found)
        .extracting(Difference::words)
        .containsExactly(
            "note was \"…deep. The seal plug sits deep. Pull it.\", is \"…deep. The seal plug sits deep. Leave"
                + " it.\"");
  }

  private static JsonNode tree(String text) {
    if (JsonText.parse(text) instanceof JsonText.Tree tree) {
      return tree.node();
    }
    throw new IllegalStateException("not JSON: " + text);
  }
}
