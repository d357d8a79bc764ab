package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compiles and runs every block of Java in the Javadoc, the README and DEVELOPERS.md, and compares the values that their
 * comments state with those that come out. What a block takes as given stands in {@code code-blocks.txt}, under the name of
 * its file.
 */
class CodeBlocksTest {

    private static final List<Path> SOURCES =
            List.of(Path.of("../fence-units/src/main/java"), Path.of("../fence-core/src/main/java"));
    private static final List<Path> PAGES = List.of(Path.of("../README.md"), Path.of("../DEVELOPERS.md"));

    @TempDir
    private Path folder;

    @TestFactory
    List<DynamicTest> everyBlockRunsAndComesToWhatItsCommentsSay() throws IOException {
        List<CodeBlock> blocks = new ArrayList<>();
        for (Path sources : SOURCES) {
            blocks.addAll(CodeBlock.inSources(sources));
        }
        for (Path page : PAGES) {
            blocks.addAll(CodeBlock.inPage(page));
        }
        assertThat(blocks).as("the documents have more than 100 blocks").hasSizeGreaterThan(100);
        Map<String, String> givens = givens();
        Set<String> idle = new HashSet<>(givens.keySet());
        String imports = imports();
        List<JavaFileObject> units = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            CodeBlock block = blocks.get(i);
            idle.remove(block.file());
            String given = givens.getOrDefault(block.file(), "");
            units.add(unit("Block" + i, imports, block, given));
        }
        assertThat(idle).as("givens for files without a block").isEmpty();
        Map<String, List<String>> errors = compile(units);
        URLClassLoader compiled =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, CodeBlocksTest.class.getClassLoader());
        List<DynamicTest> tests = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            String name = "Block" + i;
            tests.add(DynamicTest.dynamicTest(blocks.get(i).place(), () -> {
                assertThat(errors.getOrDefault(name, List.of()))
                        .as("does not compile; what it takes as given belongs in code-blocks.txt")
                        .isEmpty();
                run(compiled.loadClass("blocks." + name));
            }));
        }
        return tests;
    }

    private static JavaFileObject unit(String name, String imports, CodeBlock block, String given) {
        String own = block.file().contains("/")
                ? "import "
                        + block.file()
                                .substring(0, block.file().lastIndexOf('/'))
                                .replace('/', '.') + ".*;\n"
                : "";
        String source = "package blocks;\n" + own + imports + "public final class " + name
                + " {\npublic static void run(Path folder, BiConsumer<Object, String> shown) throws Exception {\n"
                + given + "\n" + block.statements()
                + "}\n}\n";
        return new SimpleJavaFileObject(URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source;
            }
        };
    }

    /** Compiles what it can; gives the errors by the name of the class. */
    private Map<String, List<String>> compile(List<JavaFileObject> units) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> options = List.of("-proc:none", "-nowarn", "-d", folder.toString(), "-Xmaxerrs", "1000");
        Map<String, List<String>> errors = new HashMap<>();
        List<JavaFileObject> left = units;
        // A compiler writes no class while one source has an error, so those that have are left out and it goes again.
        while (!left.isEmpty()) {
            DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
            boolean done = compiler.getTask(new StringWriter(), null, diagnostics, options, null, left)
                    .call();
            for (Diagnostic<? extends JavaFileObject> diagnostic : diagnostics.getDiagnostics()) {
                if (diagnostic.getKind() == Diagnostic.Kind.ERROR) {
                    errors.computeIfAbsent(nameOf(diagnostic.getSource()), name -> new ArrayList<>())
                            .add(diagnostic.getMessage(Locale.ROOT) + " at line " + diagnostic.getLineNumber());
                }
            }
            if (done) {
                break;
            }
            left = units.stream()
                    .filter(unit -> !errors.containsKey(nameOf(unit)))
                    .toList();
        }
        return errors;
    }

    private static String nameOf(JavaFileObject unit) {
        return unit.getName().replaceAll(".*/|\\.java$", "");
    }

    /** Runs a block and fails with every comment that states another value than comes out. */
    private void run(Class<?> block) throws ReflectiveOperationException {
        List<String> wrong = new ArrayList<>();
        BiConsumer<Object, String> shown = (value, comment) -> {
            if (!Shown.agree(value, comment)) {
                wrong.add("\"" + comment + "\" stands where " + value + " comes out");
            }
        };
        PrintStream console = System.out;
        System.setOut(new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));
        try {
            block.getMethod("run", Path.class, BiConsumer.class).invoke(null, folder, shown);
        } finally {
            System.setOut(console);
        }
        assertThat(wrong)
                .as("a comment at the end of a statement states its value; a remark stands on a line of its own")
                .isEmpty();
    }

    /** Everything that a reader of the documents would have imported. */
    private static String imports() throws IOException {
        StringBuilder imports = new StringBuilder(
                "import static org.fencecore.examples.Given.*;\nimport java.util.*;\nimport java.util.stream.*;\nimport java.math.*;\nimport java.time.*;\nimport java.util.function.*;\nimport java.nio.file.*;\nimport java.nio.charset.*;\n");
        for (Path sources : SOURCES) {
            try (Stream<Path> files = Files.walk(sources)) {
                imports.append(files.filter(file -> file.endsWith("package-info.java"))
                        .map(file -> sources.relativize(file.getParent())
                                .toString()
                                .replace('\\', '.')
                                .replace('/', '.'))
                        .filter(name -> !name.endsWith("internal"))
                        .map(name -> "import " + name + ".*;\n")
                        .sorted()
                        .collect(Collectors.joining()));
            }
        }
        return imports.toString();
    }

    /** What blocks take as given: a line {@code == file, file} and the statements for them. */
    private static Map<String, String> givens() throws IOException {
        Map<String, String> givens = new HashMap<>();
        String text = Files.readString(Path.of("src/test/resources/code-blocks.txt"));
        for (String section : text.substring(text.indexOf("== ") + 3).split("\n== ", -1)) {
            int end = section.indexOf('\n');
            for (String file : section.substring(0, end).split(", ", -1)) {
                givens.merge(file, section.substring(end + 1), String::concat);
            }
        }
        return givens;
    }
}
