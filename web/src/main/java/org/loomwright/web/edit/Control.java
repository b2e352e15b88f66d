package org.loomwright.web.edit;

import java.util.List;

/** What a form shows for a field. */
public sealed interface Control {

  /** How an input looks. */
  enum Look {
    LINE,
    LONG,
    NUMBER,
    LINES,
    BOX,
    CHOICE,
    DAY,
    SUGGESTED
  }

  /**
   * One value.
   *
   * @param name name of the field, which is its id in the page too
   * @param label what it is called
   * @param hint what it means, with an example
   * @param needed whether it must not be left out
   * @param look how it is typed
   * @param text what stands in it
   * @param choices what it may name
   * @param fixed whether it can't be changed here
   * @param error what is wrong with it; empty when nothing is
   */
  record Input(
      String name,
      String label,
      String hint,
      boolean needed,
      Look look,
      String text,
      List<Choice> choices,
      boolean fixed,
      String error)
      implements Control {
    public Input {
      choices = List.copyOf(choices);
    }

    /** Ids of the texts that describe it; empty when there is none. */
    public String described() {
      return ((hint.isEmpty() ? "" : name + "-hint ") + (error.isEmpty() ? "" : name + "-wrong"))
          .strip();
    }

    /** Lines to show at once. */
    public int height() {
      long lines = text.lines().count() + (look == Look.LINES ? 1 : 0);
      return (int) Math.max(look == Look.LINES ? 2 : 3, Math.min(14, lines + text.length() / 300));
    }
  }

  /**
   * A record in the form of another.
   *
   * @param name name of its field
   * @param legend what it is called
   * @param hint what it means
   * @param needed whether it must not be left out
   * @param present whether there is one
   * @param inLine whether its fields fit on one line
   * @param controls its fields
   * @param error what is wrong with it as a whole
   */
  record Group(
      String name,
      String legend,
      String hint,
      boolean needed,
      boolean present,
      boolean inLine,
      List<Control> controls,
      String error)
      implements Control {
    public Group {
      controls = List.copyOf(controls);
    }

    /** Whether something in it is wrong. */
    public boolean faulty() {
      return !error.isEmpty()
          || controls.stream().anyMatch(it -> it instanceof Input i && !i.error().isEmpty());
    }
  }

  /**
   * Rows of small records, or of keys with texts.
   *
   * @param name name of its field
   * @param legend what they are called
   * @param hint what they mean
   * @param noun what one of them is called
   * @param rows the rows
   * @param error what is wrong with them as a whole
   */
  record Rows(String name, String legend, String hint, String noun, List<Row> rows, String error)
      implements Control {
    public Rows {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One row.
   *
   * @param title what it is called, for readers of the page that can't see the table
   * @param origin name of the field that keeps which item on file it is; empty for none
   * @param of which item on file it is; empty for a new one
   * @param inputs its fields
   * @param error what is wrong with it as a whole
   */
  record Row(String title, String origin, String of, List<Input> inputs, String error) {
    public Row {
      inputs = List.copyOf(inputs);
    }
  }
}
