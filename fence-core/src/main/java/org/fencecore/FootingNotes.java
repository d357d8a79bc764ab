package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.LateralLoad;
import org.fencecore.strength.PostStrength;
import org.fencecore.style.Lumber;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * What the footings of a plan have to say, each thing once: posts with the same finding are listed together, and where
 * the figures differ the deepest post speaks for them. Where the posts are of a wood that is known, their strength is looked at
 * as well.
 */
final class FootingNotes {

    private FootingNotes() {}

    /** Posts that share a finding. */
    private static final class Group {
        private final List<Post> posts = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
    }

    static List<Finding> of(List<Post> posts, Lumber lumber) {
        Map<FootingDesign, List<Finding>> known = new LinkedHashMap<>();
        Map<String, Group> groups = new LinkedHashMap<>();
        for (Post post : posts) {
            for (Finding finding : known.computeIfAbsent(post.footing(), footing -> findings(footing, lumber))) {
                Group group = groups.computeIfAbsent(finding.code(), code -> new Group());
                group.posts.add(post);
                group.findings.add(finding);
            }
        }
        return groups.values().stream().map(FootingNotes::speak).toList();
    }

    /** Whether a post is strong enough, where its wood and the wind on it are known. */
    static Optional<PostStrength> strength(FootingDesign footing, Lumber lumber) {
        LateralLoad load = footing.load();
        return load.knowsPush()
                ? lumber.member()
                        .map(member -> PostStrength.of(
                                        member,
                                        load.force(),
                                        load.height(),
                                        footing.spec().exposedHeight())
                                .withGate(load.gate()))
                : Optional.empty();
    }

    private static List<Finding> findings(FootingDesign footing, Lumber lumber) {
        List<Finding> findings = new ArrayList<>(footing.findings());
        strength(footing, lumber).ifPresent(strength -> {
            findings.removeIf(finding -> finding.code().equals("post-strength-not-checked"));
            findings.addAll(strength.findings());
        });
        return findings;
    }

    private static Finding speak(Group group) {
        Finding first = group.findings.get(0);
        String place = numbers(group.posts);
        if (group.findings.stream().allMatch(first::equals)) {
            return first.at(place);
        }
        Post deepest = group.posts.stream()
                .max(Comparator.comparing(post -> post.footing().governing().depth()))
                .orElseThrow();
        return group.findings.get(group.posts.indexOf(deepest)).at(place + ", most at " + deepest);
    }

    /** Post numbers in words, runs of them joined: posts 1 to 4, 7, 9 and 10. */
    static String numbers(List<Post> posts) {
        return (posts.size() == 1 ? "post " : "posts ")
                + Written.numbers(posts.stream().map(Post::number).toList());
    }
}
