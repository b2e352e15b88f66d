package org.loomwright.web.edit;

import org.loomwright.model.json.FormField;
import org.loomwright.model.json.FormShape;

/** How the value of a field is edited. */
enum Sorts {
  /** One input. */
  INPUT,
  /** One line for each item of a list. */
  LINES,
  /** A record in the form of the record around it. */
  GROUP,
  /** Rows of small records. */
  ROWS,
  /** Rows of a key and a text. */
  ENTRIES,
  /** A form of its own. */
  OWN_FORM,
  /** A list whose items have forms of their own. */
  OWN_FORMS;

  private static final int MOST_IN_ROW = 5;

  /**
   * How a field is edited.
   *
   * @param inDocument whether it is a field of the document itself, whose lists may be long
   */
  static Sorts of(FormField field, boolean inDocument) {
    FormShape shape = field.shape();
    if (shape instanceof FormShape.Fields record) {
      return record.fields().stream().allMatch(it -> isPlain(it.shape())) ? GROUP : OWN_FORM;
    }
    if (shape instanceof FormShape.Items list) {
      if (list.item() instanceof FormShape.Fields record) {
        boolean small =
            record.fields().size() <= MOST_IN_ROW
                && record.fields().stream().allMatch(it -> isSingle(it.shape()));
        boolean many = inDocument && record.field("id").isPresent();
        return small && !many ? ROWS : OWN_FORMS;
      }
      return LINES;
    }
    return shape instanceof FormShape.Entries ? ENTRIES : INPUT;
  }

  private static boolean isPlain(FormShape shape) {
    if (shape instanceof FormShape.Items list) {
      return isSingle(list.item());
    }
    return shape instanceof FormShape.Entries || isSingle(shape);
  }

  private static boolean isSingle(FormShape shape) {
    return !(shape instanceof FormShape.Items
        || shape instanceof FormShape.Entries
        || shape instanceof FormShape.Fields);
  }
}
