package sopwell.sim;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import sopwell.kitchen.PartId;

/** Records with one component changed, whatever else they have. Stateless. */
final class Changed {
    private Changed() {}

    /** The same record, but for one component. */
    static Object with(Object record, String component, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        try {
            for (int i = 0; i < values.length; i++) {
                components[i].getAccessor().setAccessible(true);
                boolean changes = components[i].getName().equals(component);
                values[i] = changes ? value : components[i].getAccessor().invoke(record);
            }
            Class<?>[] types =
                    Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new);
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A part of an order of some other date. */
    static PartId part(String date) {
        return new PartId(date + "-0001", 1, "line");
    }
}
