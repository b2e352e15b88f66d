package org.loomwright.model.json;

import java.util.List;
import java.util.Optional;

/** What a value in a document looks like, for forms in which a person edits it. */
public sealed interface FormShape {

  /** What must stand there, for messages, e.g. {@code a length such as "820 mm"}. */
  String words();

  /** Free text, never empty. */
  record Text() implements FormShape {
    @Override
    public String words() {
      return "some text";
    }
  }

  /** A whole number, zero or more. */
  record Whole() implements FormShape {
    @Override
    public String words() {
      return "a whole number, such as 4";
    }
  }

  /** Yes or no; no when left out. */
  record YesNo() implements FormShape {
    @Override
    public String words() {
      return "yes or no";
    }
  }

  /**
   * One of a few words.
   *
   * @param choice the words, as documents have them
   */
  record Words(List<String> choice) implements FormShape {
    public Words {
      choice = List.copyOf(choice);
    }

    @Override
    public String words() {
      return "one of " + String.join(", ", choice);
    }
  }

  /**
   * Text with a form of its own, such as a length.
   *
   * @param type name of its type, e.g. "Length"
   * @param noun for people, with article
   * @param example a text that can be read
   */
  record Formed(String type, String noun, String example) implements FormShape {
    @Override
    public String words() {
      return noun + " such as \"" + example + "\"";
    }
  }

  /**
   * A list; empty when left out.
   *
   * @param item what each item looks like
   */
  record Items(FormShape item) implements FormShape {
    @Override
    public String words() {
      return "one or more, each " + item.words();
    }
  }

  /**
   * Values by free keys; empty when left out.
   *
   * @param item what each value looks like
   */
  record Entries(FormShape item) implements FormShape {
    @Override
    public String words() {
      return "one or more, each with a key and " + item.words();
    }
  }

  /**
   * A record.
   *
   * @param type name of its type, e.g. "FuseBlock"
   * @param noun the type in words, e.g. "fuse block"
   * @param fields its fields in order
   */
  record Fields(String type, String noun, List<FormField> fields) implements FormShape {
    public Fields {
      fields = List.copyOf(fields);
    }

    @Override
    public String words() {
      return "a " + noun;
    }

    /** The field with a key. */
    public Optional<FormField> field(String key) {
      return fields.stream().filter(it -> it.key().equals(key)).findFirst();
    }
  }
}
