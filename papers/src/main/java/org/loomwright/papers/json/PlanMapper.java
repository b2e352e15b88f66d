package org.loomwright.papers.json;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.Arrays;
import java.util.Locale;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.jsontype.NamedType;
import tools.jackson.databind.module.SimpleModule;

/**
 * What writes plans and their parts as JSON: keys as the records name them, in their order; kinds
 * and constants as words with hyphens.
 */
public final class PlanMapper {
  private PlanMapper() {}

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  private interface Kinds {}

  /** A new mapper; it is never changed afterwards. */
  public static JsonMapper mapper() {
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
