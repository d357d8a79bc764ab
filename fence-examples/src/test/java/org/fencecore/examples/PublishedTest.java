package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** The POMs, the dependencies and what is built to be published beside the jars. */
class PublishedTest {

    private static final List<String> MODULES = List.of("fence-units", "fence-core", "fence-examples", "benchmarks");

    private record Dependency(String name, String scope, boolean optional) {}

    @Test
    void dependenciesAreThoseThatDevelopersNames() throws Exception {
        Set<String> declared = new TreeSet<>();
        Set<String> ofTheJars = new TreeSet<>();
        for (String module : MODULES) {
            for (Dependency dependency : dependencies(module)) {
                declared.add(dependency.name());
                boolean published = module.equals("fence-units") || module.equals("fence-core");
                if (published && dependency.scope().equals("compile") && !dependency.optional()) {
                    ofTheJars.add(dependency.name());
                }
            }
        }
        Set<String> named = new TreeSet<>();
        Set<String> namedForTheJars = new TreeSet<>();
        Published.dependencies().forEach((name, who) -> {
            if (!who.contains("through")) {
                named.add(name);
            }
            if (who.equals("jars")) {
                namedForTheJars.add(name);
            }
        });
        assertThat(named).isEqualTo(declared);
        assertThat(namedForTheJars).isEqualTo(ofTheJars);
    }

    /** The bill of materials lists what comes along with the jars, whoever asks for it. */
    @Test
    void whatComesWithTheJarsIsWhatDevelopersNames() throws IOException, URISyntaxException {
        Path bill = Path.of("../fence-core/target/bom.json");
        Published.require(
                !Published.jars().isEmpty() && Files.exists(bill), "no bill of materials; \"mvn verify\" writes it");
        Set<String> listed = new TreeSet<>();
        Matcher purl =
                Pattern.compile("\"purl\" : \"pkg:maven/([^/]+)/([^@]+)@").matcher(Files.readString(bill));
        while (purl.find()) {
            listed.add(purl.group(1) + ":" + purl.group(2));
        }
        listed.removeIf(name -> name.matches("org\\.fencecore:.*|org\\.cyclonedx:.*"));
        Set<String> named = new TreeSet<>();
        Published.dependencies().forEach((name, who) -> {
            if (who.startsWith("jars") || who.startsWith("optional")) {
                named.add(name);
            }
        });
        assertThat(listed).isEqualTo(named);
    }

    /** What a release needs of a POM but for addresses, which are given with the first one; see DEVELOPERS.md. */
    @ParameterizedTest
    @CsvSource({"fence-units", "fence-core"})
    void pomsSayWhatTheyAreAndTheParentTheLicence(String module) throws Exception {
        Element pom = pom("../" + module);
        assertThat(text(pom, "name")).isNotEmpty();
        assertThat(text(pom, "description")).isNotEmpty();
        assertThat(text(child(pom, "parent"), "artifactId")).isEqualTo("fence-core-parent");

        Element parent = pom("..");
        Element licence = child(child(parent, "licenses"), "license");
        assertThat(text(licence, "name")).isEqualTo("Apache-2.0");
        assertThat(Files.readString(Path.of("../LICENSE"))).contains("Apache License", "Version 2.0");
        assertThat(text(child(parent, "properties"), "project.build.outputTimestamp"))
                .as("a fixed time for jars that two builds make alike")
                .isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0, org/fencecore/units/Length.java, org.fencecore.units/org/fencecore/units/Length.html",
        "1, org/fencecore/FencePlan.java, org.fencecore/org/fencecore/FencePlan.html"
    })
    void sourcesAndJavadocAreBuiltBesideTheJar(int module, String source, String page) throws Exception {
        String jar = Published.jars().get(module).toString();
        assertThat(Path.of(jar)).satisfies(file -> assertHas(file, source.replace(".java", ".class")));
        Path sources = Path.of(jar.replaceFirst("\\.jar$", "-sources.jar"));
        Path javadoc = Path.of(jar.replaceFirst("\\.jar$", "-javadoc.jar"));
        Published.require(
                Files.exists(sources) && Files.exists(javadoc),
                "sources and Javadoc are not built; \"mvn verify\" does");
        assertHas(sources, source);
        assertHas(javadoc, page);
    }

    @Test
    void theCoreHasAModuleNameOfItsOwn() throws Exception {
        try (JarFile jar = new JarFile(Published.jars().get(1).toFile())) {
            Manifest manifest = jar.getManifest();
            assertThat(manifest.getMainAttributes().getValue("Automatic-Module-Name"))
                    .isEqualTo("org.fencecore");
        }
    }

    private static void assertHas(Path file, String entry) throws IOException {
        try (JarFile jar = new JarFile(file.toFile())) {
            assertThat(jar.getEntry(entry)).as("%s in %s", entry, file).isNotNull();
        }
    }

    private static List<Dependency> dependencies(String module)
            throws IOException, ParserConfigurationException, SAXException {
        List<Dependency> dependencies = new ArrayList<>();
        for (Element dependency : children(child(pom("../" + module), "dependencies"))) {
            String group = text(dependency, "groupId");
            if (!group.equals("org.fencecore")) {
                String scope = text(dependency, "scope");
                dependencies.add(new Dependency(
                        group + ":" + text(dependency, "artifactId"),
                        scope.isEmpty() ? "compile" : scope,
                        text(dependency, "optional").equals("true")));
            }
        }
        return dependencies;
    }

    private static Element pom(String folder) throws IOException, ParserConfigurationException, SAXException {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of(folder, "pom.xml").toFile())
                .getDocumentElement();
    }

    private static List<Element> children(Element element) {
        List<Element> children = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                children.add(child);
            }
        }
        return children;
    }

    private static Element child(Element element, String name) {
        return children(element).stream()
                .filter(child -> child.getTagName().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in " + element.getTagName()));
    }

    private static String text(Element element, String name) {
        return children(element).stream()
                .filter(child -> child.getTagName().equals(name))
                .map(child -> child.getTextContent().strip())
                .findFirst()
                .orElse("");
    }
}
