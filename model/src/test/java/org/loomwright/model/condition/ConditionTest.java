package org.loomwright.model.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

class ConditionTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          # text                                | printed again
          tow-prep = yes                        | tow-prep = yes
          tow-prep=yes                          | tow-prep = yes
          `  ( tow-prep  =  yes )  `            | tow-prep = yes
          a != b                                | a != b
          not a = b                             | a != b
          not a != b                            | not a != b
          not not a = b                         | not a != b
          a in (x)                              | a in (x)
          a in(x,y , z)                         | a in (x, y, z)
          not a in (x, y)                       | not a in (x, y)
          not rear-feed = no and a = b          | rear-feed != no and a = b
          not (a = b and c = d)                 | not (a = b and c = d)
          a = b or c = d and e = f              | a = b or c = d and e = f
          (a = b or c = d) and e = f            | (a = b or c = d) and e = f
          a = b or (c = d and e = f)            | a = b or c = d and e = f
          a = b and (c = d and e = f)           | a = b and c = d and e = f
          (((a = b)))                           | a = b
          always                                | always
          never                                 | never
          not always                            | not always
          always and a = b                      | always and a = b
          unknown                               | unknown
          ` unknown `                           | unknown
          x.y/z:1_2-3 = 2.5                     | x.y/z:1_2-3 = 2.5
          Tow = Yes and tow = yes               | Tow = Yes and tow = yes
          größe = groß                          | größe = groß
          android = order                       | android = order
          """)
  void readsAndPrints(String text, String printed) {
    Condition condition = Condition.of(text);
    assertThat(condition.text()).isEqualTo(text);
    assertThat(condition.expr().print()).isEqualTo(printed);
    assertThat(Condition.of(printed).expr()).isEqualTo(condition.expr());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          # text                     | at | problem contains          | expected contains
          ``                         | 0  | the text ends             | a statement
          `   `                      | 3  | the text ends             | a statement
          tow-prep yes               | 9  | "yes"                     | "="
          tow-prep                   | 8  | the text ends             | "="
          tow-prep =                 | 10 | the text ends             | a value of tow-prep
          tow-prep = = yes           | 11 | "="                       | a value of tow-prep
          a = b c = d                | 6  | "c"                       | and, or
          a = b and                  | 9  | the text ends             | a statement
          a = b and or c = d         | 10 | word of the language      | a statement
          and a = b                  | 0  | word of the language      | a statement
          (a = b                     | 6  | the text ends             | for the "(" at character 1
          (a = b or (c = d)          | 17 | the text ends             | for the "(" at character 1
          a = b)                     | 5  | ")"                       | the end
          ()                         | 1  | ")"                       | a statement
          not                        | 3  | the text ends             | a statement
          a not = b                  | 2  | "not"                     | "!="
          a in x                     | 5  | "x"                       | "("
          a in ()                    | 6  | ")"                       | a value of a
          a in (x                    | 7  | the text ends             | comma
          a in (x,)                  | 8  | ")"                       | a value of a
          a in (x y)                 | 8  | "y"                       | comma
          a in (x, y, x)             | 12 | listed twice              | once
          a = b AND c = d            | 6  | "AND"                     | "and" in lower case
          a = b Or c = d             | 6  | "Or"                      | "or" in lower case
          (a = b OR c = d)           | 7  | "OR"                      | "or" in lower case
          NOT a = b                  | 0  | "NOT"                     | "not" in lower case
          a IN (x)                   | 2  | "IN"                      | "in" in lower case
          Always                     | 0  | "Always"                  | "always" in lower case
          UNKNOWN                    | 0  | "UNKNOWN"                 | "unknown" in lower case
          unknown and a = b          | 0  | part of a longer          | a statement
          a = b or unknown           | 9  | part of a longer          | a statement
          (unknown)                  | 1  | part of a longer          | a statement
          not unknown                | 4  | part of a longer          | a statement
          a = unknown                | 4  | part of a longer          | a value of a
          a = not                    | 4  | word of the language      | a value of a
          a == b                     | 2  | "=="                      | "="
          a <> b                     | 2  | "<>"                      | "!="
          a ≠ b                      | 2  | "≠"                       | "!="
          a = b && c = d             | 6  | "&&"                      | and
          !a = b                     | 0  | "!"                       | not
          a = "b"                    | 4  | sign                      | without quotation marks
          a = -b                     | 4  | "-"                       | starts with a letter or digit
          a = b; c = d               | 5  | ";"                       | comma
          a = b 🚐                   | 6  | "🚐"                      | comma
          always never               | 7  | "never"                   | and, or
          """)
  void saysWhereAndWhy(String text, int position, String problem, String expected) {
    ConditionException e = refusal(text);
    assertThat(e.position()).isEqualTo(position);
    assertThat(e.problem()).contains(problem);
    assertThat(e.expected()).contains(expected);
    assertThat(e.text()).isEqualTo(text);
    assertThat(e)
        .hasMessageContaining("at character " + (position + 1) + ",")
        .hasMessageContaining(e.problem())
        .hasMessageContaining(e.expected());
  }

  @Test
  void refusesTheStrokesOfOtherLanguages() {
    ConditionException e = refusal("a = b || c = d");
    assertThat(e.position()).isEqualTo(6);
    assertThat(e.problem()).contains("\"||\"");
    assertThat(e.expected()).isEqualTo("the word or");
  }

  @Test
  void messageReadsAsOneSentence() {
    assertThat(refusal("tow-prep yes"))
        .hasMessage(
            "\"tow-prep yes\" can't be read as a condition: at character 10, \"yes\" stands here;"
                + " expected \"=\", \"!=\" or in after the trait tow-prep");
  }

  @Test
  void messagesStayShort() {
    String name = "n".repeat(4_000);
    assertThat(refusal(name + " yes").getMessage()).hasSizeLessThan(300);
    assertThat(refusal(name + " in (" + name + ", " + name + ")").getMessage())
        .hasSizeLessThan(300);
  }

  @Test
  void refusesWhatIsTooLongOrTooDeep() {
    assertThat(refusal("a = " + "b".repeat(9_997)).position()).isEqualTo(10_000);
    assertThat(Condition.of("a = " + "b".repeat(9_996)).text()).hasSize(10_000);
    assertThat(refusal("(".repeat(10_000)).position()).isEqualTo(100);
    assertThat(refusal("not ".repeat(2_500)).position()).isEqualTo(400);
    String deepest = "(".repeat(100) + "a = b" + ")".repeat(100);
    assertThat(Condition.of(deepest).expr()).isEqualTo(new Expr.Is("a", "b"));
    // Wide is not deep.
    assertThat(Condition.of("a = b or ".repeat(1_100) + "a = b").traits()).containsExactly("a");
  }

  @Test
  void combinesWithFewParentheses() {
    Condition a = Condition.is("a", "1");
    Condition b = Condition.is("b", "1");
    Condition c = Condition.is("c", "1");
    assertThat(a.or(b).and(c).text()).isEqualTo("(a = 1 or b = 1) and c = 1");
    assertThat(a.and(b).or(c).text()).isEqualTo("a = 1 and b = 1 or c = 1");
    assertThat(a.and(b).and(c).text()).isEqualTo(a.and(b.and(c)).text());
    assertThat(a.and(b).negate().text()).isEqualTo("not (a = 1 and b = 1)");
    assertThat(a.negate().text()).isEqualTo("a != 1");
    assertThat(a.negate().negate()).isEqualTo(a);
    assertThat(Condition.always().and(a)).isEqualTo(a);
    assertThat(a.and(Condition.always())).isEqualTo(a);
    assertThat(Condition.never().and(a)).isEqualTo(Condition.never());
    assertThat(a.or(Condition.always())).isEqualTo(Condition.always());
    assertThat(Condition.never().or(a)).isEqualTo(a);
    assertThat(Condition.never().negate()).isEqualTo(Condition.always());
  }

  @Test
  void unknownStandsAlone() {
    Condition unknown = Condition.of("unknown");
    assertThat(unknown.isUnknown()).isTrue();
    assertThat(unknown).isEqualTo(Condition.unknown());
    assertThat(unknown.traits()).isEmpty();
    Condition a = Condition.is("a", "1");
    assertThat(a.isUnknown()).isFalse();
    assertThatThrownBy(() -> unknown.and(a)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> a.or(unknown)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(unknown::negate).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> unknown.holds(Map.of())).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> new Expr.Not(new Expr.Unknown()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aMissingTraitNeverGoesUnseen() {
    Condition condition = Condition.of("a = 1 or b = 1");
    assertThat(condition.holds(Map.of("a", "1", "b", "2", "z", "0"))).isTrue();
    // The answer would be true without b, yet it is asked for.
    assertThatThrownBy(() -> condition.holds(Map.of("a", "1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("trait b");
  }

  @Test
  void namesAreChecked() {
    assertThat(List.of("a", "0", "2.5", "a-b_c.d/e:f", "groß")).allMatch(Condition::isName);
    assertThat(List.of("", "-a", "a b", "a=b", "and", "IN", "Unknown", "a,", "(a"))
        .noneMatch(Condition::isName);
    assertThatThrownBy(() -> Condition.is("a b", "c"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a b");
    assertThatThrownBy(() -> new Expr.In("a", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Expr.In("a", List.of("x", "x")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void textAndExpressionCantDisagree() {
    assertThatThrownBy(() -> new Condition("a = b", new Expr.Is("a", "c")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void jsonKeepsTheTextAsWritten() {
    record Holder(Condition when) {}
    JsonMapper mapper = JsonMapper.builder().build();
    String json = "{\"when\":\"not  (a=b)\"}";
    Holder read = mapper.readValue(json, Holder.class);
    assertThat(read.when().expr()).isEqualTo(Condition.of("a != b").expr());
    assertThat(mapper.writeValueAsString(read)).isEqualTo(json);
    assertThatExceptionOfType(JacksonException.class)
        .isThrownBy(() -> mapper.readValue("{\"when\":\"a b\"}", Holder.class))
        .withRootCauseInstanceOf(ConditionException.class);
  }

  private static ConditionException refusal(String text) {
    ConditionException e = catchThrowableOfType(ConditionException.class, () -> Condition.of(text));
    assertThat(e).as("refusal of \"%s\"", text).isNotNull();
    return e;
  }
}
