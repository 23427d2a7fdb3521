package halfwidth.bounds;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** What a compiled class declares, without its code. */
final class Shape extends ClassVisitor {
    /** A method or field that it declares. */
    record Declared(String name, String descriptor, boolean isNative) {}

    private final Set<Declared> members = new HashSet<>();
    private final List<String> annotations = new ArrayList<>();
    private final List<String> parents = new ArrayList<>();

    private Shape() {
        super(Opcodes.ASM9);
    }

    static Shape of(ClassReader reader) {
        Shape shape = new Shape();
        reader.accept(
                shape, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
        return shape;
    }

    /** What it extends and implements, by internal name. */
    List<String> parents() {
        return parents;
    }

    Set<Declared> members() {
        return members;
    }

    /** The classes of the annotations on it and on what it declares, by internal name. */
    List<String> annotations() {
        return annotations;
    }

    boolean declares(String name, String descriptor) {
        return members.contains(new Declared(name, descriptor, false));
    }

    @Override
    public void visit(
            int version, int access, String name, String signature, String parent, String[] all) {
        parents.add(parent);
        parents.addAll(List.of(all));
    }

    @Override
    public FieldVisitor visitField(
            int access, String name, String descriptor, String signature, Object value) {
        members.add(new Declared(name, descriptor, false));
        return new FieldVisitor(Opcodes.ASM9) {
            @Override
            public AnnotationVisitor visitAnnotation(String type, boolean visible) {
                return annotated(type);
            }
        };
    }

    @Override
    public MethodVisitor visitMethod(
            int access, String name, String descriptor, String signature, String[] thrown) {
        members.add(new Declared(name, descriptor, (access & Opcodes.ACC_NATIVE) != 0));
        return new MethodVisitor(Opcodes.ASM9) {
            @Override
            public AnnotationVisitor visitAnnotation(String type, boolean visible) {
                return annotated(type);
            }

            @Override
            public AnnotationVisitor visitParameterAnnotation(
                    int parameter, String type, boolean visible) {
                return annotated(type);
            }
        };
    }

    @Override
    public AnnotationVisitor visitAnnotation(String type, boolean visible) {
        return annotated(type);
    }

    private AnnotationVisitor annotated(String descriptor) {
        annotations.add(Type.getType(descriptor).getInternalName());
        return null;
    }
}
