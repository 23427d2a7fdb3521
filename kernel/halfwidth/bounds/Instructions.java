package halfwidth.bounds;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Where the code of a class uses what; to say of what the constant pool is refused for. */
final class Instructions extends MethodVisitor {
    /** What an instruction uses, with its line in the source of the class; -1 if it tells none. */
    record Used(Reference reference, int line) {}

    private final List<Used> used;
    private int line = -1;

    private Instructions(List<Used> used) {
        super(Opcodes.ASM9);
        this.used = used;
    }

    /** All that the code of a class uses, in its order. */
    static List<Used> of(ClassReader reader) {
        List<Used> used = new ArrayList<>();
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access, String name, String type, String signature, String[] all) {
                        return new Instructions(used);
                    }
                },
                ClassReader.SKIP_FRAMES);
        return used;
    }

    private void add(Reference reference) {
        used.add(new Used(reference, line));
    }

    @Override
    public void visitLineNumber(int number, Label start) {
        line = number;
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
        add(Reference.type(type));
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
        add(Reference.member(owner, name, descriptor));
    }

    @Override
    public void visitMethodInsn(
            int opcode, String owner, String name, String descriptor, boolean ofInterface) {
        add(Reference.member(owner, name, descriptor));
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
        add(Reference.type(descriptor));
    }

    @Override
    public void visitLdcInsn(Object value) {
        constant(value);
    }

    @Override
    public void visitInvokeDynamicInsn(
            String name, String descriptor, Handle bootstrap, Object... arguments) {
        dynamic(descriptor, bootstrap, arguments);
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
        if (type != null) {
            add(Reference.type(type));
        }
    }

    private void dynamic(String descriptor, Handle bootstrap, Object... arguments) {
        for (Object argument : arguments) {
            constant(argument);
        }
        constant(bootstrap);
        ConstantPool.types(descriptor).forEach(type -> add(Reference.type(type)));
    }

    private void constant(Object value) {
        if (value instanceof Handle handle) {
            add(Reference.member(handle.getOwner(), handle.getName(), handle.getDesc()));
        } else if (value instanceof ConstantDynamic dynamic) {
            Object[] arguments = new Object[dynamic.getBootstrapMethodArgumentCount()];
            for (int i = 0; i < arguments.length; i++) {
                arguments[i] = dynamic.getBootstrapMethodArgument(i);
            }
            dynamic(dynamic.getDescriptor(), dynamic.getBootstrapMethod(), arguments);
        } else if (value instanceof Type type) {
            ConstantPool.types(type.getDescriptor()).forEach(one -> add(Reference.type(one)));
        }
    }
}
