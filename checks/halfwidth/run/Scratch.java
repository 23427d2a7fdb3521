package halfwidth.run;

import java.util.*;

public class Scratch {
    public static void main(String[] a) throws Exception {
        long t0 = System.nanoTime();
        try (Workshop w = Workshop.withoutSpare(Budget.USUAL)) {
            StringBuilder code =
                    new StringBuilder(
                            "double k = x / 2; // in\ndouble z = Double.parseDouble(\"q\"); // 1\n");
            for (int i = 0; i < 25; i++)
                code.append("double s" + i + " = sin(k) + " + i + " * x; // mm: note " + i + "\n");
            code.append(
                    "double bad = z + 1;\ndouble nan = 0.0/0;\nif (x > 0) {\n  k = 5;\n}\nk + 1\n");
            OpenPage p =
                    w.open(
                            new Script(
                                    List.of(
                                            new Script.Variable(3, "x", "double"),
                                            new Script.Variable(4, "y", "double"),
                                            new Script.Code(10, code.toString(), false),
                                            new Script.Code(
                                                    50,
                                                    "double wait = y + 1;\nagrees(k, 5, 0.1); // source\nagrees(k, 6, 0.1); // source\n",
                                                    true)),
                                    List.of("k", "s3")));
            Run r = p.run(new Values(Map.of("x", 3.0)));
            System.out.printf("first %.0f ms%n", (System.nanoTime() - t0) / 1e6);
            r.steps().forEach(s -> System.out.println(s));
            r.checks().forEach(System.out::println);
            System.out.println(r.finals());
            for (int i = 0; i < 2000; i++) {
                r = p.run(new Values(Map.of("x", 3.0 + i)));
            }
            long t = System.nanoTime();
            for (int i = 0; i < 500; i++) p.run(new Values(Map.of("x", 3.0 + i)));
            System.out.printf("replay %.3f ms%n", (System.nanoTime() - t) / 1e6 / 500);
            p.close();
        }
    }
}
