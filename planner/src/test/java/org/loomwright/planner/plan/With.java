package org.loomwright.planner.plan;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Copies of records with one component changed, for planting faults. */
public final class With {
  private With() {}

  /** The record with another value of one component. */
  public static <T extends Record> T changed(T record, String component, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = new Object[components.length];
    boolean found = false;
    try {
      for (int i = 0; i < components.length; i++) {
        boolean here = components[i].getName().equals(component);
        found |= here;
        values[i] = here ? value : components[i].getAccessor().invoke(record);
      }
      if (!found) {
        throw new IllegalArgumentException(record.getClass() + " has no " + component);
      }
      @SuppressWarnings("unchecked")
      Class<T> type = (Class<T>) record.getClass();
      return type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new))
          .newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("can't change " + component + " of " + record, e);
    }
  }
}
