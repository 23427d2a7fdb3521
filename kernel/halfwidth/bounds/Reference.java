package halfwidth.bounds;

import org.objectweb.asm.Type;

/**
 * What a compiled class names of another one.
 *
 * @param owner the class, by its binary name, such as {@code java.util.Map$Entry}; the class of the
 *     elements of an array, "" where they are primitive
 * @param array whether it is an array of them
 * @param member the method or field; "" for the class itself
 * @param descriptor of the member; "" for the class itself
 */
record Reference(String owner, boolean array, String member, String descriptor) {
    static Reference type(String internalName) {
        return member(internalName, "", "");
    }

    static Reference member(String internalName, String member, String descriptor) {
        if (!internalName.startsWith("[")) {
            return new Reference(internalName.replace('/', '.'), false, member, descriptor);
        }
        Type element = Type.getType(internalName).getElementType();
        String owner = element.getSort() == Type.OBJECT ? element.getClassName() : "";
        return new Reference(owner, true, member, descriptor);
    }

    /** As a page would write it. */
    String shown() {
        String type = owner.replace('$', '.');
        return switch (member) {
            case "" -> type;
            case "<init>" -> "new " + type;
            default -> type + "." + member;
        };
    }
}
