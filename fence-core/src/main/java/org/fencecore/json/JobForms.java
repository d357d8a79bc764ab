package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.POINT;
import static org.fencecore.json.Quantities.LENGTH;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fencecore.SetPost;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.units.tape.TapeFormat;

/** The form of a job. */
final class JobForms {

    /** The version of both kinds of document; a change that an older reader would not understand raises it. */
    static final int VERSION = 1;

    private static final int MOST_POSTS = 100_000;

    static final Form<Integer> VERSION_ONE = new Form<>() {
        @Override
        Integer read(Place place) {
            int version = place.count();
            if (version != VERSION) {
                throw place.refusal("the version was " + version + "; this library reads version " + VERSION);
            }
            return version;
        }

        @Override
        Object write(Integer value) {
            return value;
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
            return new LinkedHashMap<>(Map.of("const", VERSION));
        }
    };

    private static final Form<SetPost> SET_POST = Made.<SetPost>named("setPost", "A post that stands already.")
            .from(
                    required("number", COUNT, SetPost::number, "its number on the plan"),
                    required("centre", POINT, SetPost::centre, "where it stands"),
                    SetPost::of)
            .with(maybe("exposed", LENGTH, SetPost::exposed, "how far it is out of the ground"), SetPost::withExposed)
            .end(post -> post);

    static final Made<Job, Job> JOB = Made.<Job>named("job", "A fence to be planned.")
            .from(
                    required("version", VERSION_ONE, job -> VERSION, "the version of this format"),
                    required("site", SiteForms.SITE, Job::site, "what the ground is"),
                    required(
                            "style",
                            StyleForms.STYLE,
                            Job::style,
                            "what the owner wants; an empty object for the usual"),
                    (version, site, style) -> Job.of(site, style))
            .with(maybe("name", TEXT, Job::name, "what the sheets call it"), Job::withName)
            .with(
                    usual("setPosts", listOf(SET_POST, MOST_POSTS), Job::setPosts, "the posts that stand already"),
                    Job::withSetPosts)
            .with(
                    usual("tape", Basics.oneOf(tapes()), Job::tape, "how lengths are written on the sheets"),
                    Job::withTape)
            .with(usual("paper", Basics.oneOf(papers()), Job::paper, "what drawings are printed on"), Job::withPaper)
            .end(job -> job);

    private JobForms() {}

    private static Map<String, TapeFormat> tapes() {
        Map<String, TapeFormat> tapes = new LinkedHashMap<>();
        tapes.put("FEET_AND_INCHES", TapeFormat.feetAndInches(16));
        tapes.put("INCHES", TapeFormat.inches(16));
        tapes.put("DECIMAL_FEET", TapeFormat.decimalFeet(2));
        tapes.put("MILLIMETRES", TapeFormat.millimetres(0));
        tapes.put("METRES", TapeFormat.metres(3));
        return tapes;
    }

    private static Map<String, Paper> papers() {
        Map<String, Paper> papers = new LinkedHashMap<>();
        papers.put("LETTER", Paper.LETTER);
        papers.put("TABLOID", Paper.TABLOID);
        papers.put("A4", Paper.A4);
        papers.put("A3", Paper.A3);
        return papers;
    }
}
