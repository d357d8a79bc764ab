package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.LateralLoad;
import org.fencecore.strength.PostStrength;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.strength.WoodMember;
import org.fencecore.strength.WoodSection;
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

    /** What a footing has to say, and where the wood of the post is known, whether it is strong enough. */
    private static List<Finding> findings(FootingDesign footing, Lumber lumber) {
        LateralLoad load = footing.load();
        if (!load.knowsPush() || lumber.species().isEmpty() || lumber.grade().isEmpty()) {
            return footing.findings();
        }
        SpeciesGroup species = lumber.species().get();
        WoodGrade grade = lumber.grade().get();
        WoodSection section = WoodSection.of(lumber.thickness(), lumber.width());
        if (ReferenceValues.find(species, grade, section).isEmpty()) {
            return footing.findings();
        }
        PostStrength strength = PostStrength.of(
                        WoodMember.builder(species, section).grade(grade).build(),
                        load.force(),
                        load.height(),
                        footing.spec().exposedHeight())
                .withGate(load.gate());
        List<Finding> findings = new ArrayList<>(footing.findings());
        findings.removeIf(finding -> finding.code().equals("post-strength-not-checked"));
        findings.addAll(strength.findings());
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
        List<String> parts = new ArrayList<>();
        int i = 0;
        while (i < posts.size()) {
            int last = i;
            while (last + 1 < posts.size()
                    && posts.get(last + 1).number() == posts.get(last).number() + 1) {
                last++;
            }
            if (last - i >= 2) {
                parts.add(posts.get(i).number() + " to " + posts.get(last).number());
                i = last + 1;
            } else {
                parts.add(String.valueOf(posts.get(i).number()));
                i++;
            }
        }
        return (posts.size() == 1 ? "post " : "posts ") + Written.list(parts);
    }
}
