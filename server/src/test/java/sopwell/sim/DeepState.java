package sopwell.sim;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.orders.Selling;
import sopwell.stock.larder.PieceTakes;
import sopwell.stock.recipes.RecipeBook;

/**
 * Everything that a stand holds, written out, private fields and all, so that two stands can be
 * compared without anybody having thought of the field that differs. Menus and recipes are written
 * by their revision; what only remembers answers to save work is left out. Stateless.
 */
final class DeepState {
    private DeepState() {}

    static String of(Stand stand) {
        StringBuilder out = new StringBuilder(1 << 16);
        write(stand, "", out);
        return out.toString();
    }

    /** Where two states first differ. */
    static String difference(String one, String other) {
        List<String> ones = one.lines().toList();
        List<String> others = other.lines().toList();
        for (int i = 0; i < Math.min(ones.size(), others.size()); i++) {
            if (!ones.get(i).equals(others.get(i))) {
                return ones.get(i) + " / " + others.get(i);
            }
        }
        return ones.size() + " / " + others.size() + " lines";
    }

    private static void write(Object value, String path, StringBuilder out) {
        if (value instanceof Menu menu) {
            line(path, menu.revision(), out);
        } else if (value instanceof RecipeBook book) {
            line(path, book.revision(), out);
        } else if (value instanceof Optional<?> optional) {
            write(optional.orElse(null), path + "?", out);
        } else if (value instanceof Map<?, ?> map) {
            write(map, path, out);
        } else if (value instanceof Collection<?> collection) {
            int i = 0;
            for (Object one : collection) {
                write(one, path + "[" + i++ + "]", out);
            }
            line(path, "size " + i, out);
        } else if (isPlain(value)) {
            line(path, String.valueOf(value), out);
        } else if (!(value instanceof Selling || value instanceof PieceTakes)) {
            fields(value, path, out);
        }
    }

    /** Maps in an order of their own are written in it, others by their keys. */
    private static void write(Map<?, ?> map, String path, StringBuilder out) {
        boolean ordered = map instanceof LinkedHashMap || map instanceof SortedMap;
        List<String> entries = new ArrayList<>();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            StringBuilder one = new StringBuilder();
            write(entry.getValue(), path + "{" + entry.getKey() + "}", one);
            entries.add(one.toString());
        }
        if (!ordered) {
            entries.sort(null);
        }
        entries.forEach(out::append);
        line(path, "size " + entries.size(), out);
    }

    private static boolean isPlain(Object value) {
        return value == null
                || value instanceof Enum
                || value instanceof Record
                || value.getClass().getName().startsWith("java.");
    }

    private static void fields(Object value, String path, StringBuilder out) {
        Class<?> type = value.getClass();
        if (type.isSynthetic() || type.isHidden()) {
            return;
        }
        for (Field field : type.getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers())) {
                try {
                    field.setAccessible(true);
                    write(field.get(value), path + "." + field.getName(), out);
                } catch (IllegalAccessException impossible) {
                    throw new IllegalStateException(impossible);
                }
            }
        }
    }

    private static void line(String path, String value, StringBuilder out) {
        out.append(path).append(" = ").append(value).append('\n');
    }
}
