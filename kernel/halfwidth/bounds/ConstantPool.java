package halfwidth.bounds;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Type;

/**
 * All that a class can refer to: the JVM reaches another class only by an entry of the constant
 * pool, whatever instruction, method handle, bootstrap method or dynamic constant uses it.
 */
final class ConstantPool {
    private static final int CLASS = 7;
    private static final int FIELD = 9;
    private static final int METHOD = 10;
    private static final int INTERFACE_METHOD = 11;
    private static final int NAME_AND_TYPE = 12;
    private static final int METHOD_TYPE = 16;

    private final ClassReader reader;
    private final char[] buffer;

    ConstantPool(ClassReader reader) {
        this.reader = reader;
        this.buffer = new char[reader.getMaxStringLength()];
    }

    Set<Reference> references() {
        Set<Reference> all = new LinkedHashSet<>();
        for (int i = 1; i < reader.getItemCount(); i++) {
            int entry = reader.getItem(i);
            if (entry == 0) {
                continue; // the second half of a long or double
            }
            switch (reader.readByte(entry - 1)) {
                case CLASS -> all.add(Reference.type(reader.readUTF8(entry, buffer)));
                case FIELD, METHOD, INTERFACE_METHOD -> {
                    int named = reader.getItem(reader.readUnsignedShort(entry + 2));
                    all.add(
                            Reference.member(
                                    reader.readClass(entry, buffer),
                                    reader.readUTF8(named, buffer),
                                    reader.readUTF8(named + 2, buffer)));
                }
                case NAME_AND_TYPE ->
                        types(reader.readUTF8(entry + 2, buffer))
                                .forEach(type -> all.add(Reference.type(type)));
                case METHOD_TYPE ->
                        types(reader.readUTF8(entry, buffer))
                                .forEach(type -> all.add(Reference.type(type)));
                default -> {
                    // A number, text, or an entry that only points to others of the pool.
                }
            }
        }
        return all;
    }

    /** The classes in the descriptor of a field or method, by internal name. */
    static List<String> types(String descriptor) {
        List<String> names = new ArrayList<>();
        Type type = Type.getType(descriptor);
        if (type.getSort() == Type.METHOD) {
            for (Type argument : type.getArgumentTypes()) {
                add(argument, names);
            }
            add(type.getReturnType(), names);
        } else {
            add(type, names);
        }
        return names;
    }

    private static void add(Type type, List<String> names) {
        Type element = type.getSort() == Type.ARRAY ? type.getElementType() : type;
        if (element.getSort() == Type.OBJECT) {
            names.add(element.getInternalName());
        }
    }
}
