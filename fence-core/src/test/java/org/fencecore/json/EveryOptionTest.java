package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.footing.HoleShape;
import org.fencecore.footing.PostSetting;
import org.fencecore.footing.SoilClass;
import org.fencecore.gate.GateSpec;
import org.fencecore.geometry.Zone;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.packet.BuildPacket;
import org.fencecore.rail.RailSpec;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.CurveCall;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.GridSurface;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.wind.AsceWind;
import org.fencecore.wind.EnWind;
import org.fencecore.wood.WoodInUse;
import org.junit.jupiter.api.Test;

/** Whatever can be given to the library's builders has a field, and every field is written and read back. */
class EveryOptionTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Where a way to make or change something is found in a job, by class and method, if not under the method's name. */
    private static final Map<String, String> FIELDS = new LinkedHashMap<>();

    static {
        // Site
        FIELDS.put("Site$Builder.gate", "gates");
        // Lot: how it is begun
        FIELDS.put("LotBoundary.of", "courses");
        FIELDS.put("LotBoundary.startingAt", "start");
        FIELDS.put("LotBoundary.ofCorners", "corners");
        FIELDS.put("LotBoundary.withFacetsWithin", "facetsWithin");
        FIELDS.put("Course.of", "straight");
        FIELDS.put("Course.between", "corners");
        FIELDS.put("CurveCall.minor", "major");
        FIELDS.put("CurveCall.tangentTo", "tangentIn"); // the bearing that it gives is written
        // Ground
        FIELDS.put("GridSurface.of", "grid");
        FIELDS.put("ShotSurface.of", "shots");
        FIELDS.put("ShotSurface.withReach", "reach");
        FIELDS.put("SoilClass.ofLateralBearing", "tested");
        FIELDS.put("SoilClass.ofSymbol", "symbol");
        // Zones, obstacles, rules
        FIELDS.put("Zone.widenedBy", "margin");
        FIELDS.put("Obstacle.withName", "name");
        FIELDS.put("Obstacle.withClear", "clear");
        FIELDS.put("HeightLimit.of", "heightLimit");
        FIELDS.put("HeightLimit.withExemption", "exemption");
        FIELDS.put("CornerVisibility.of", "cornerVisibility");
        FIELDS.put("CornerVisibility.withUpTo", "upTo");
        FIELDS.put("CornerVisibility.withExemption", "exemption");
        // Style
        FIELDS.put("BoardPattern.withGapAtEnds", "gapAtEnds");
        FIELDS.put("BoardPattern.withGaps", "gaps");
        FIELDS.put("BoardPattern.withLap", "lap");
        FIELDS.put("BoardPattern.withLaps", "laps");
        FIELDS.put("BoardPattern.withSmallestPart", "smallestPart");
        FIELDS.put("BoardPattern.withRipping", "ripping");
        FIELDS.put("BoardStyle.withEnds", "ends");
        FIELDS.put("BoardStyle.withNailersEvery", "nailersEvery");
        FIELDS.put("BoardStyle.withWood", "wood");
        FIELDS.put("BoardEnds.square", "ends"); // what is not said
        FIELDS.put("BoardEnds.withSlopedTop", "slopedTop");
        FIELDS.put("BoardEnds.withSlopedBottom", "slopedBottom");
        FIELDS.put("BoardEnds.withDogEars", "dogEars");
        FIELDS.put("WoodInUse.of", "wood");
        FIELDS.put("Lumber.of", "lumber");
        FIELDS.put("ReferenceValues.given", "values");
        FIELDS.put("RailSpec.withSticksUpTo", "longestStick"); // the result is written
        for (String size : List.of("fourByFour", "sixBySix", "twoByFour", "oneBySix", "oneByThree", "oneByFour")) {
            FIELDS.put("Lumber." + size, "lumber"); // spelled out
        }
    }

    private static final List<Class<?>> MADE_BY_FACTORIES = List.of(
            LotBoundary.class,
            Course.class,
            CurveCall.class,
            GridSurface.class,
            ShotSurface.class,
            SoilClass.class,
            Zone.class,
            Obstacle.class,
            HeightLimit.class,
            CornerVisibility.class,
            ClearGround.class,
            BoardPattern.class,
            BoardStyle.class,
            BoardEnds.class,
            WoodInUse.class,
            TopShape.class,
            HoleShape.class,
            Lumber.class,
            ReferenceValues.class,
            RailSpec.class);

    private static final List<Class<?>> BUILDERS = List.of(
            Site.Builder.class,
            GateLocation.Builder.class,
            PoolBarrier.Builder.class,
            AsceWind.Builder.class,
            EnWind.Builder.class,
            FenceStyle.Builder.class,
            RailSpec.Builder.class,
            SlopeSpec.Builder.class,
            PostSpacingSpec.Builder.class,
            PostSetting.Builder.class,
            GateSpec.Builder.class,
            GateHardware.Builder.class);

    /** Every name in the schema: fields, kinds and definitions. */
    private static Set<String> names() throws JsonProcessingException {
        Set<String> names = new HashSet<>();
        collect(JSON.readTree(JobJson.schema()), names);
        return names;
    }

    private static void collect(JsonNode node, Set<String> names) {
        node.properties().forEach(entry -> names.add(entry.getKey()));
        if (node.has("const")) {
            names.add(node.get("const").asText());
        }
        node.forEach(child -> collect(child, names));
    }

    /** A method of a builder that is new and has no field yet fails here: give it one in the form of its class. */
    @Test
    void whateverABuilderTakesHasAField() throws JsonProcessingException {
        Set<String> names = names();
        Set<String> without = new TreeSet<>();
        for (Class<?> type : BUILDERS) {
            methods(type, type)
                    .filter(method -> !has(names, type, method))
                    .forEach(method -> without.add(type.getName() + "." + method.getName()));
        }
        for (Class<?> type : MADE_BY_FACTORIES) {
            methods(type, type)
                    .filter(method -> !has(names, type, method))
                    .forEach(method -> without.add(type.getName() + "." + method.getName()));
        }
        assertThat(without).as("methods without a field in the job's JSON").isEmpty();
    }

    @Test
    void theLedgerOfFieldsNamesNothingThatIsGone() {
        Set<String> there = new HashSet<>();
        Stream.concat(BUILDERS.stream(), MADE_BY_FACTORIES.stream())
                .forEach(type -> methods(type, type).forEach(method -> there.add(key(type, method))));
        assertThat(there).containsAll(FIELDS.keySet());
    }

    private static Stream<Method> methods(Class<?> type, Class<?> returned) {
        return Stream.of(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .filter(method -> method.getReturnType() == returned)
                .filter(method -> !method.isSynthetic());
    }

    private static String key(Class<?> type, Method method) {
        String name = type.getName();
        return name.substring(name.lastIndexOf('.') + 1) + "." + method.getName();
    }

    private static boolean has(Set<String> names, Class<?> type, Method method) {
        return names.contains(FIELDS.getOrDefault(key(type, method), method.getName()));
    }

    @Test
    void everyOptionIsWrittenReadAndPlannedAlike() {
        for (Job job : EveryOption.jobs()) {
            String written = JobJson.write(job);
            assertThat(SchemaTest.problems(JobJson.schema(), written)).isEmpty();
            Job read = JobJson.read(written);
            assertThat(JobJson.write(read)).isEqualTo(written);
            assertThat(read.style().pattern()).isEqualTo(job.style().pattern());
            assertThat(read.style().boards()).isEqualTo(job.style().boards());
            assertThat(read.style().setting()).isEqualTo(job.style().setting());
            assertThat(read.style().gate()).isEqualTo(job.style().gate());
            assertThat(read.style().gateHardware()).isEqualTo(job.style().gateHardware());
            assertThat(read.style().postLumber()).isEqualTo(job.style().postLumber());
            assertThat(read.site().obstacles()).isEqualTo(job.site().obstacles());
            assertThat(read.site().wind()).isEqualTo(job.site().wind());
            assertThat(read.packet().files()).isEqualTo(job.packet().files());
        }
    }

    @Test
    void everyPlanIsWrittenAndReadAgain() {
        for (Job job : EveryOption.jobs()) {
            String written = PlanJson.write(job);
            assertThat(SchemaTest.problems(PlanJson.schema(), written)).isEmpty();
            FencePlan plan = PlanJson.read(written);
            assertThat(BuildPacket.of(plan).files())
                    .isEqualTo(BuildPacket.of(job.plan()).files());
            assertThat(JobJson.write(PlanJson.readJob(written))).isEqualTo(JobJson.write(job));
        }
    }

    /** Fields that say in other words what others are written as. */
    private static final Set<String> ONLY_READ = Set.of("maximumSpace", "holeDiameter", "lap", "symbol");

    @Test
    void theJobsAboveWriteEveryFieldThatThereIs() throws JsonProcessingException {
        JsonNode schema = JSON.readTree(JobJson.schema());
        Set<String> written = new TreeSet<>();
        for (Job job : EveryOption.jobs()) {
            walk(schema, schema, "", JSON.readTree(JobJson.write(job)), written);
        }
        Set<String> all = new TreeSet<>();
        fields(schema, "", all);
        schema.get("$defs").properties().forEach(definition -> fields(definition.getValue(), definition.getKey(), all));
        all.removeIf(field ->
                ONLY_READ.contains(field.substring(field.lastIndexOf('/') + 1)) || field.startsWith("soil/symbol/"));
        assertThat(written).containsAll(all);
    }

    /** The fields of an object in the schema, each with the name and kind of the object. */
    private static void fields(JsonNode schema, String name, Set<String> into) {
        schema.path("properties").properties().forEach(field -> into.add(name + "/" + field.getKey()));
        for (JsonNode kind : schema.path("oneOf")) {
            fields(kind, name + "/" + kind.at("/properties/kind/const").asText(), into);
        }
    }

    private static void walk(JsonNode root, JsonNode schema, String name, JsonNode value, Set<String> into) {
        if (schema.has("$ref")) {
            String reference = schema.get("$ref").asText();
            walk(root, root.at(reference.substring(1)), reference.substring("#/$defs/".length()), value, into);
        } else if (schema.has("oneOf")) {
            for (JsonNode kind : schema.get("oneOf")) {
                String its = kind.at("/properties/kind/const").asText();
                if (its.equals(value.get("kind").asText())) {
                    walk(root, kind, name + "/" + its, value, into);
                }
            }
        } else if (value.isObject()) {
            value.properties().forEach(field -> {
                into.add(name + "/" + field.getKey());
                walk(root, schema.at("/properties/" + field.getKey()), "", field.getValue(), into);
            });
        } else if (value.isArray()) {
            value.forEach(item -> walk(root, schema.get("items"), "", item, into));
        }
    }

    @Test
    void whatIsOnlyReadMeansTheSame() {
        String written = JobJson.write(EveryOption.jobs().get(3));
        String read = written.replace("\"rails\" : 3,", "\"maximumSpace\" : \"28 in\",");
        assertThat(read).isNotEqualTo(written);
        assertThat(JobJson.read(read).style().rails().rails()).isEqualTo(3);
        String soil = written.replace("\"kind\" : \"presumptive\"", "\"kind\" : \"symbol\"")
                .replace("\"class\" : \"CLAY\"", "\"symbol\" : \"GW\"");
        assertThat(JobJson.read(soil).site().soil()).isEqualTo(SoilClass.SANDY_GRAVEL);
    }
}
