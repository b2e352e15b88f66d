package org.loomwright.drawing.ink;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Names as people write them, and names nobody expects. */
public final class OddWords {
  private OddWords() {}

  /** Plain, long, unbroken, foreign, marked up and broken text. */
  public static Arbitrary<String> any() {
    Arbitrary<String> word = Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(14);
    return Arbitraries.oneOf(
        word.list().ofMinSize(1).ofMaxSize(5).map(it -> String.join(" ", it)),
        word.list().ofMinSize(1).ofMaxSize(25).map(it -> String.join(" ", it)),
        Arbitraries.strings().alpha().ofMaxLength(120),
        Arbitraries.strings().all().ofMaxLength(30),
        Arbitraries.of(
            "",
            "  ",
            "<b>&amp;\"'",
            "a,b 3.5",
            "Kühlmittelpumpenrelais Übergang ÄÖÜ gjpqy",
            "前照灯 左",
            "\uD83D\uDD0B battery",
            "lone \uD800 half",
            "tab\tand\nline",
            "\uFFFE\uFFFF\u0000",
            "e\u0301\u0302\u0303"));
  }
}
