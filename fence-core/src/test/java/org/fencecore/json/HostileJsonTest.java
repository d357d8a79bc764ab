package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Whatever is read, it is a job or it is refused with its place; nothing else happens. Seeded;
 * {@code -Dfuzz.inputs=1000000} makes the long run.
 */
class HostileJsonTest {

    private static final int INPUTS = Integer.getInteger("fuzz.inputs", 10_000);

    /** Values that have no business where they are put, and some that nearly have. */
    private static final List<Object> STRANGE = List.of(
            "",
            " ",
            "0 in",
            "-1 in",
            "1 in",
            "9000000000 m",
            "1/0 in",
            "90°",
            "N 5° E",
            "1e400 psf",
            "0 psf",
            "-5 %",
            "\u0000\uFFFF\uD800",
            "kind",
            "x".repeat(2_000),
            0,
            -1,
            1,
            999_999_999,
            true,
            List.of(),
            List.of(1, 2, 3),
            List.of(List.of(List.of())),
            Map.of(),
            Map.of("kind", "grid"),
            Map.of("east", "1 ft", "north", "9000000000 m"));

    private final Random random = new Random(20_260_101);

    @Test
    void brokenTextIsRefusedOrRead() {
        List<String> texts = EveryOption.jobs().stream().map(JobJson::write).toList();
        int refused = 0;
        for (int i = 0; i < INPUTS / 2; i++) {
            StringBuilder text = new StringBuilder(texts.get(random.nextInt(texts.size())));
            for (int change = random.nextInt(3); change >= 0; change--) {
                breakText(text);
            }
            refused += isRefused(text.toString()) ? 1 : 0;
        }
        assertThat(refused).isBetween(INPUTS / 4, INPUTS / 2 - 1);
    }

    private void breakText(StringBuilder text) {
        int at = random.nextInt(text.length());
        String signs = "{}[]\",:\\0123456789.eE+-/' \n\t\u0000ntf";
        switch (random.nextInt(5)) {
            case 0 -> text.deleteCharAt(at);
            case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
            case 2 -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
            case 3 -> text.setLength(at + 1);
            default -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(200))));
        }
    }

    @Test
    void strangeValuesAreRefusedOrRead() {
        List<Node> trees = EveryOption.jobs().stream()
                .map(JobJson::write)
                .map(JsonText::read)
                .toList();
        int refused = 0;
        for (int i = 0; i < INPUTS / 2; i++) {
            Node tree = trees.get(random.nextInt(trees.size()));
            @SuppressWarnings("unchecked")
            Map<String, Object> changed = (Map<String, Object>) changed(tree, 1 + random.nextInt(300));
            refused += isRefused(JsonText.write(changed)) ? 1 : 0;
        }
        assertThat(refused).isBetween(INPUTS / 4, INPUTS / 2 - 1);
    }

    private int left;

    /** The tree with one value replaced, left out or renamed: that which is reached after so many. */
    private Object changed(Node tree, int after) {
        left = after;
        Object changed = copy(tree);
        return changed instanceof Map<?, ?> ? changed : Map.of();
    }

    private Object copy(Node node) {
        left--;
        if (left == 0) {
            return STRANGE.get(random.nextInt(STRANGE.size()));
        }
        return switch (node.kind()) {
            case OBJECT -> {
                Map<String, Object> copy = new LinkedHashMap<>();
                node.members().forEach((name, member) -> {
                    Object value = copy(member);
                    if (left != 0 || random.nextInt(4) > 0) {
                        copy.put(left == 0 && random.nextInt(4) == 0 ? name + "s" : name, value);
                    }
                });
                yield copy;
            }
            case LIST -> {
                List<Object> copy = new ArrayList<>();
                node.items().forEach(item -> copy.add(copy(item)));
                yield copy;
            }
            case NUMBER -> Integer.parseInt((String) node.content());
            default -> node.content();
        };
    }

    private static boolean isRefused(String text) {
        try {
            assertThat(JobJson.write(JobJson.read(text))).isNotEmpty();
            return false;
        } catch (UnreadableJsonException e) {
            assertThat(e.problem()).isNotBlank().hasSizeLessThan(2_000);
            assertThat(e.line()).isPositive();
            assertThat(e.column()).isPositive();
            return true;
        }
    }
}
