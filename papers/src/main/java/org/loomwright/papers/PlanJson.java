package org.loomwright.papers;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.Arrays;
import java.util.Locale;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Plan;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.jsontype.NamedType;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plan as JSON: keys as the records name them, in their order; kinds and constants as words with
 * hyphens; numbers in the unit their key names.
 */
public final class PlanJson {
  /** Version of this form. */
  public static final int FORMAT = 1;

  private static final JsonMapper MAPPER = mapper();

  private PlanJson() {}

  /** The plan as one JSON object with a line feed at the end. */
  public static String text(Plan plan) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("kind", "plan");
    root.put("format", FORMAT);
    root.put("releasable", plan.releasable());
    root.setAll((ObjectNode) MAPPER.valueToTree(plan));
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\r\n", "\n")
        + "\n";
  }

  /** The guide alone in the same form, on one line. */
  public static String guide(Guide guide) {
    return MAPPER.writeValueAsString(guide);
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  private interface Kinds {}

  private static JsonMapper mapper() {
    SimpleModule words = new SimpleModule();
    words.addSerializer(new EnumWords());
    JsonMapper.Builder builder =
        JsonMapper.builder()
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .changeDefaultVisibility(it -> it.withIsGetterVisibility(Visibility.NONE))
            .addModule(words)
            .addMixIn(Landing.class, Kinds.class)
            .addMixIn(Act.class, Kinds.class);
    for (Class<?> sealed : new Class<?>[] {Landing.class, Act.class}) {
      Arrays.stream(sealed.getPermittedSubclasses())
          .forEach(it -> builder.registerSubtypes(new NamedType(it, hyphened(it.getSimpleName()))));
    }
    return builder.build();
  }

  private static String hyphened(String name) {
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  private static final class EnumWords extends ValueSerializer<Enum<?>> {
    @Override
    public void serialize(Enum<?> value, JsonGenerator out, SerializationContext context) {
      out.writeString(value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @Override
    @SuppressWarnings("unchecked")
    public Class<Enum<?>> handledType() {
      return (Class<Enum<?>>) (Class<?>) Enum.class;
    }
  }
}
