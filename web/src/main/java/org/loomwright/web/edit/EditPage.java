package org.loomwright.web.edit;

import java.util.List;

/**
 * A form with what surrounds it.
 *
 * @param title what is edited, in words
 * @param lead what has to be known first; may be empty
 * @param crumbs the way to it
 * @param action address the form is sent to
 * @param basedOn number of the revision it was opened on
 * @param back where a person goes on afterwards
 * @param controls its fields
 * @param complaints why nothing was saved
 * @param lists what has forms of its own
 * @param tools what else can be done with the part
 * @param focus name of the field to go to; empty for none
 */
public record EditPage(
    String title,
    String lead,
    List<Link> crumbs,
    String action,
    long basedOn,
    String back,
    List<Control> controls,
    Complaints complaints,
    List<PartList> lists,
    Tools tools,
    String focus) {
  public EditPage {
    crumbs = List.copyOf(crumbs);
    controls = List.copyOf(controls);
    lists = List.copyOf(lists);
  }

  /** Somewhere to go. */
  public record Link(String words, String href) {}

  /**
   * Parts with forms of their own.
   *
   * @param anchor word by which the page names it
   * @param label what they are called
   * @param hint what they mean
   * @param items each of them
   * @param add where one more is added; empty words when there can be no more
   */
  public record PartList(String anchor, String label, String hint, List<Link> items, Link add) {
    public PartList {
      items = List.copyOf(items);
    }
  }

  /**
   * What can be done with the part as a whole.
   *
   * @param remove where it can be taken out; empty when it can't
   * @param move where it can be moved in its list; empty when it can't
   * @param at the way to it
   * @param up whether it can move up
   * @param down whether it can move down
   */
  public record Tools(String remove, String move, String at, boolean up, boolean down) {
    static Tools none() {
      return new Tools("", "", "", false, false);
    }
  }
}
