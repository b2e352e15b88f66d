package org.loomwright.web.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sends a form as a browser would when nobody touches it. */
final class AsBrowser {
  private AsBrowser() {}

  /** Names and values of all fields that would be sent. */
  static Map<String, List<String>> sent(EditPage page) {
    Map<String, List<String>> sent = new LinkedHashMap<>();
    for (Control it : page.controls()) {
      send(it, sent);
    }
    return sent;
  }

  private static void send(Control control, Map<String, List<String>> sent) {
    if (control instanceof Control.Input it) {
      send(it, sent);
    } else if (control instanceof Control.Group it) {
      if (!it.needed() && it.present()) {
        sent.put(it.name() + "~is", List.of("true"));
      }
      it.controls().forEach(inner -> send(inner, sent));
    } else if (control instanceof Control.Rows it) {
      sent.put(it.name() + "~rows", List.of(Integer.toString(it.rows().size())));
      for (Control.Row row : it.rows()) {
        if (!row.origin().isEmpty()) {
          sent.put(row.origin(), List.of(row.of()));
        }
        row.inputs().forEach(inner -> send(inner, sent));
      }
    }
  }

  private static void send(Control.Input it, Map<String, List<String>> sent) {
    switch (it.look()) {
      case BOX -> {
        if (it.text().equals("true")) {
          sent.put(it.name(), List.of("true"));
        }
      }
      case CHOICE -> {
        assertThat(it.choices()).extracting(Choice::value).contains(it.text());
        sent.put(it.name(), List.of(it.text()));
      }
      case LONG, LINES -> sent.put(it.name(), List.of(it.text().replace("\n", "\r\n")));
      default -> sent.put(it.name(), List.of(it.text().replace("\n", "")));
    }
  }

  /** All single fields of a form. */
  static List<Control.Input> inputs(EditPage page) {
    List<Control.Input> inputs = new ArrayList<>();
    page.controls().forEach(it -> collect(it, inputs));
    return inputs;
  }

  private static void collect(Control control, List<Control.Input> inputs) {
    if (control instanceof Control.Input it) {
      inputs.add(it);
    } else if (control instanceof Control.Group it) {
      it.controls().forEach(inner -> collect(inner, inputs));
    } else if (control instanceof Control.Rows it) {
      it.rows().forEach(row -> inputs.addAll(row.inputs()));
    }
  }
}
