package org.fencecore.units;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A unit that a length may be written in, with its size and its spellings. */
enum LengthUnit {
    MILLIMETRE(Length.NANOMETRES_PER_MILLIMETRE, "mm millimetre millimetres millimeter millimeters"),
    CENTIMETRE(10 * Length.NANOMETRES_PER_MILLIMETRE, "cm centimetre centimetres centimeter centimeters"),
    METRE(Length.NANOMETRES_PER_METRE, "m metre metres meter meters"),
    INCH(Length.NANOMETRES_PER_INCH, "\" ″ ” “ in inch inches"),
    FOOT(Length.NANOMETRES_PER_FOOT, "' ′ ’ ‘ ft foot feet"),
    YARD(3 * Length.NANOMETRES_PER_FOOT, "yd yds yard yards"),
    LINK(66 * Length.NANOMETRES_PER_FOOT / 100, "lk lks link links"),
    ROD(33 * Length.NANOMETRES_PER_FOOT / 2, "rd rds rod rods"),
    CHAIN(66 * Length.NANOMETRES_PER_FOOT, "ch chs chain chains"),
    /** 1200/3937 m; the names of the survey units begin with "US survey", which {@link #take} reads word by word. */
    US_SURVEY_FOOT(1200 * Length.NANOMETRES_PER_METRE, ""),
    US_SURVEY_LINK(792 * Length.NANOMETRES_PER_METRE, ""),
    US_SURVEY_ROD(19_800 * Length.NANOMETRES_PER_METRE, ""),
    US_SURVEY_CHAIN(79_200 * Length.NANOMETRES_PER_METRE, "");

    /** The spellings that are one character and need no blank. */
    static final String MARKS = "'′’‘\"″”“";

    private static final Map<String, LengthUnit> BY_SPELLING = Arrays.stream(values())
            .filter(unit -> !unit.spellings.isEmpty())
            .flatMap(unit -> Stream.of(unit.spellings.split(" ")).map(spelling -> Map.entry(spelling, unit)))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private final BigInteger nanometres;
    private final String spellings;

    LengthUnit(long nanometres, String spellings) {
        this.nanometres = BigInteger.valueOf(nanometres);
        this.spellings = spellings;
    }

    /** The nanometres in {@link #count} of this unit, a whole number. */
    BigInteger nanometres() {
        return nanometres;
    }

    /** How many of this unit are a whole number of nanometres: 3937 of the survey units, and one of any other. */
    BigInteger count() {
        return switch (this) {
            case US_SURVEY_FOOT, US_SURVEY_LINK, US_SURVEY_ROD, US_SURVEY_CHAIN -> BigInteger.valueOf(3937);
            default -> BigInteger.ONE;
        };
    }

    /** The unit that may follow this one in the same length, as inches follow feet; this one itself if none may. */
    LengthUnit smaller() {
        return switch (this) {
            case FOOT -> INCH;
            case CHAIN -> LINK;
            default -> this;
        };
    }

    /** How many of the smaller unit make up this one. */
    BigInteger inSmaller() {
        return nanometres.divide(smaller().nanometres);
    }

    /** Takes the name or mark of a unit, after blanks if there are any. */
    static LengthUnit take(TextCursor in, String expected) {
        in.takeBlanks();
        int start = in.position();
        String spelling = in.takeUnit(MARKS);
        if (spelling.equals("u")) {
            spelling += in.takeUnit(""); // the S of U.S.
        }
        if (spelling.equals("us")) {
            takeSurvey(in);
            return surveyUnit(in);
        }
        LengthUnit unit = BY_SPELLING.get(spelling);
        if (unit == null) {
            throw in.refusal(start, expected);
        }
        return unit;
    }

    private static void takeSurvey(TextCursor in) {
        in.takeBlanks();
        int start = in.position();
        if (!in.takeUnit("").equals("survey")) {
            throw in.refusal(start, "\"survey ft\" after US");
        }
    }

    private static LengthUnit surveyUnit(TextCursor in) {
        in.takeBlanks();
        int start = in.position();
        LengthUnit unit = BY_SPELLING.get(in.takeUnit(""));
        if (unit == FOOT) {
            return US_SURVEY_FOOT;
        }
        if (unit == LINK) {
            return US_SURVEY_LINK;
        }
        if (unit == ROD) {
            return US_SURVEY_ROD;
        }
        if (unit == CHAIN) {
            return US_SURVEY_CHAIN;
        }
        throw in.refusal(start, "\"ft\", \"rods\", \"chains\" or \"links\" after US survey");
    }
}
