package org.fencecore.units;

import static java.util.Comparator.comparing;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Compares what fence-units offers its users with the committed list, so that it changes only on purpose.
 *
 * <p>After a wanted change, run {@code mvn -q test -Dtest=ApiSignatureTest -Dapi.update=true
 * -Dsurefire.failIfNoSpecifiedTests=false} at the root, and commit the list with the change.
 */
class ApiSignatureTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final Path COMMITTED = Path.of("src/test/resources/api/fence-units.txt");

    @Test
    void theApiIsTheCommittedOne() throws IOException {
        String api = exportedTypes()
                .sorted(comparing(Class::getName))
                .flatMap(ApiSignatureTest::lines)
                .collect(joining("\n", "", "\n"));
        if (Boolean.getBoolean("api.update")) {
            Files.writeString(COMMITTED, api);
        }
        assertThat(COMMITTED)
                .as("API list of fence-units (missing: new in the code); on purpose? then run with -Dapi.update=true")
                .usingCharset(StandardCharsets.UTF_8)
                .hasContent(api);
    }

    private static Stream<Class<?>> exportedTypes() throws IOException {
        Set<String> exported = exportedPackages();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            List<Path> compiled = files.filter(file -> file.toString().endsWith(".class")
                            && !file.endsWith("module-info.class")
                            && !file.endsWith("package-info.class"))
                    .toList();
            return compiled.stream()
                    .<Class<?>>map(ApiSignatureTest::load)
                    .filter(type -> isVisible(type) && exported.contains(type.getPackageName()));
        }
    }

    private static Set<String> exportedPackages() throws IOException {
        try (InputStream descriptor = Files.newInputStream(CLASSES.resolve("module-info.class"))) {
            return ModuleDescriptor.read(descriptor).exports().stream()
                    .map(ModuleDescriptor.Exports::source)
                    .collect(toUnmodifiableSet());
        }
    }

    private static Class<?> load(Path file) {
        String name = CLASSES.relativize(file).toString().replace(".class", "").replaceAll("[/\\\\]", ".");
        try {
            return Class.forName(name, false, ApiSignatureTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(name + " was compiled but is not on the path", e);
        }
    }

    private static boolean isVisible(Class<?> type) {
        return isVisible(type.getModifiers())
                && Optional.ofNullable(type.getEnclosingClass())
                        .map(ApiSignatureTest::isVisible)
                        .orElse(true);
    }

    private static boolean isVisible(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    /** The type itself, what it extends, and its members in a fixed order. */
    private static Stream<String> lines(Class<?> type) {
        Stream<String> supertypes = Stream.concat(
                        Stream.ofNullable(type.getGenericSuperclass()), Arrays.stream(type.getGenericInterfaces()))
                .map(supertype -> "    is a " + supertype.getTypeName());
        Stream<String> subtypes = Stream.ofNullable(type.getPermittedSubclasses())
                .flatMap(Arrays::stream)
                .map(subtype -> "    permits only " + subtype.getTypeName());
        return Stream.of(
                        Stream.of(type.toGenericString()),
                        supertypes,
                        subtypes,
                        members(type).sorted())
                .flatMap(lines -> lines);
    }

    private static Stream<String> members(Class<?> type) {
        return Stream.of(
                        Arrays.stream(type.getDeclaredFields())
                                .filter(ApiSignatureTest::isOffered)
                                .map(Field::toGenericString),
                        Arrays.stream(type.getDeclaredConstructors())
                                .filter(ApiSignatureTest::isOffered)
                                .map(Constructor::toGenericString),
                        Arrays.stream(type.getDeclaredMethods())
                                .filter(ApiSignatureTest::isOffered)
                                .map(Method::toGenericString))
                .flatMap(lines -> lines)
                .map(line -> "    " + line);
    }

    private static boolean isOffered(Member member) {
        return isVisible(member.getModifiers()) && !member.isSynthetic();
    }
}
