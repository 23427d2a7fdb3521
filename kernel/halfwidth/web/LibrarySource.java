package halfwidth.web;

import halfwidth.page.Page;
import halfwidth.page.Part;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds the text of the methods of the physics library that a page's steps call. A call is found
 * where its receiver is a class, or a variable that the page declares with its class.
 */
final class LibrarySource {
    private static final Pattern IMPORT =
            Pattern.compile("import (halfwidth\\.localizer[\\w.]*)\\.(\\*|\\w+);");
    private static final Pattern DECLARED =
            Pattern.compile("\\b([A-Z]\\w*)(?:<[^>=]*>)?\\s+([a-z]\\w*)\\b");
    private static final Pattern CALL =
            Pattern.compile("\\bnew\\s+([A-Z]\\w*)\\s*\\(|\\b([A-Za-z]\\w*)\\.(\\w+)\\s*\\(");

    private final List<String> packages;
    private final Map<String, String> declared = new LinkedHashMap<>();

    /**
     * A method of the library.
     *
     * @param text with its Javadoc
     */
    record Method(String name, String text) {}

    LibrarySource(Page page) {
        String code =
                page.parts().stream()
                        .filter(Part.Steps.class::isInstance)
                        .map(part -> ((Part.Steps) part).code())
                        .collect(Collectors.joining("\n"));
        packages = IMPORT.matcher(code).results().map(found -> found.group(1)).distinct().toList();
        DECLARED.matcher(code)
                .results()
                .forEach(found -> declared.putIfAbsent(found.group(2), found.group(1)));
    }

    /** The methods that some steps call, each once, in the order of the calls. */
    List<Method> calledBy(String code) {
        Map<String, Method> methods = new LinkedHashMap<>();
        Matcher call = CALL.matcher(code);
        while (call.find()) {
            boolean made = call.group(1) != null;
            String receiver = made ? call.group(1) : call.group(2);
            String type = declared.getOrDefault(receiver, receiver);
            String name = made ? type : call.group(3);
            String shown = made ? "new " + type : type + "." + name;
            source(type)
                    .flatMap(text -> member(text, name))
                    .ifPresent(text -> methods.putIfAbsent(shown, new Method(shown, text)));
        }
        return new ArrayList<>(methods.values());
    }

    private Optional<String> source(String type) {
        return packages.stream()
                .map(name -> "/sources/" + name.replace('.', '/') + "/" + type + ".java")
                .map(LibrarySource::read)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> read(String resource) {
        try (InputStream in = LibrarySource.class.getResourceAsStream(resource)) {
            return in == null
                    ? Optional.empty()
                    : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A member with its Javadoc. The library is formatted, so a member is indented by four. */
    static Optional<String> member(String source, String name) {
        Pattern member =
                Pattern.compile(
                        "(?m)(?:^    /\\*\\*(?:(?!\\*/)[\\s\\S])*\\*/\\n)?(?:^    @.*\\n)*"
                                + "^    (?! )[^=;(\\n*]*\\b"
                                + Pattern.quote(name)
                                + "\\s*\\([\\s\\S]*?\\n    \\}\\n");
        Matcher found = member.matcher(source);
        return found.find() ? Optional.of(found.group().stripIndent()) : Optional.empty();
    }
}
