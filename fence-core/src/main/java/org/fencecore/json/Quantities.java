package org.fencecore.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fencecore.geometry.Bearing;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;

/**
 * The forms of quantities: texts with a unit, which read back as the very value. Where the usual unit would not say it
 * exactly, the SI unit does.
 */
final class Quantities {

    static final Form<Length> LENGTH = text(
            "length",
            "A length: feet and inches with fractions or decimals, or metres or millimetres.",
            List.of("6 ft", "5 1/2 in", "10' 6\"", "1.83 m", "140 mm"),
            Length::parse,
            Length::toString);

    static final Form<Angle> ANGLE = text(
            "angle",
            "An angle in degrees, or in degrees, minutes and seconds, or in radians.",
            List.of("90°", "45°30'15\"", "45.5 deg", "0.7853981633974483 rad"),
            Quantities::angle,
            Quantities::text);

    static final Form<Bearing> BEARING = text(
            "bearing",
            "A direction in plan: a quadrant bearing, or an azimuth clockwise from north or from south.",
            List.of("N 45°30' E", "due north", "azimuth from north 237.5°", "azimuth from south 57°30'"),
            Quantities::bearing,
            Quantities::text);

    static final Form<Slope> SLOPE = text(
            "slope",
            "A grade: in percent, as 1:n, as a rise per foot or metre, as an angle, or rise over run.",
            List.of("5 %", "1:20", "1/2 in/ft", "3 deg", "0.05 rise/run"),
            Quantities::slope,
            Quantities::text);

    static final Form<Pressure> PRESSURE = measure(
            "pressure",
            "A pressure or stress.",
            "10 psf",
            unit("psf", Pressure::ofPsf, Pressure::psf),
            unit("psi", Pressure::ofPsi, Pressure::psi),
            unit("Pa", Pressure::ofPascals, Pressure::pascals));

    static final Form<Force> FORCE = measure(
            "force",
            "A force.",
            "100 lbf",
            unit("lbf", Force::ofPoundsForce, Force::poundsForce),
            unit("N", Force::ofNewtons, Force::newtons));

    static final Form<Moment> MOMENT = measure(
            "moment",
            "A moment.",
            "500 lbf-ft",
            unit("lbf-ft", Moment::ofPoundFeet, Moment::poundFeet),
            unit("N-m", Moment::ofNewtonMetres, Moment::newtonMetres));

    static final Form<UnitWeight> UNIT_WEIGHT = measure(
            "unitWeight",
            "A weight for each volume, or what is the same a pressure for each depth.",
            "150 psf/ft",
            unit("psf/ft", UnitWeight::ofPcf, UnitWeight::pcf),
            unit("pcf", UnitWeight::ofPcf, UnitWeight::pcf),
            unit("N/m3", UnitWeight::ofNewtonsPerCubicMetre, UnitWeight::newtonsPerCubicMetre));

    static final Form<Speed> SPEED = measure(
            "speed",
            "A speed.",
            "110 mph",
            unit("mph", Speed::ofMilesPerHour, Speed::milesPerHour),
            unit("m/s", Speed::ofMetresPerSecond, Speed::metresPerSecond));

    static final Form<Area> SQUARE = measure(
            "area",
            "An area.",
            "7500 sq ft",
            unit("sq ft", Area::ofSquareFeet, Area::squareFeet),
            unit("m2", Area::ofSquareMetres, Area::squareMetres));

    static final Form<Volume> VOLUME = measure(
            "volume",
            "A volume.",
            "1.5 cu ft",
            unit("cu ft", Volume::ofCubicFeet, Volume::cubicFeet),
            unit("cu yd", Volume::ofCubicYards, Volume::cubicYards),
            unit("m3", Volume::ofCubicMetres, Volume::cubicMetres));

    static final Form<Ratio> RATIO = measure(
            "ratio",
            "A share or factor, in percent or as a plain number.",
            "50 %",
            unit("%", Ratio::ofPercent, Ratio::percent),
            unit("", Ratio::of, Ratio::value));

    private static final int LONGEST = 64;
    private static final Pattern NUMBER = Pattern.compile("([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]{1,3})?) *(.*)");
    private static final String RADIANS = "rad";
    private static final String RISE_OVER_RUN = "rise/run";
    private static final String FROM_NORTH = "azimuth from north ";
    private static final String FROM_SOUTH = "azimuth from south ";

    private Quantities() {}

    private static Angle angle(String text) {
        return text.endsWith(RADIANS) ? Angle.ofRadians(number(text, RADIANS)) : Angle.parse(text);
    }

    private static String text(Angle angle) {
        String text = angle.toString();
        return text.length() <= LONGEST && Angle.parse(text).equals(angle)
                ? text
                : exact(angle.radians()) + " " + RADIANS;
    }

    private static Bearing bearing(String text) {
        if (text.startsWith(FROM_NORTH)) {
            return Bearing.ofAzimuth(angle(text.substring(FROM_NORTH.length())));
        }
        return text.startsWith(FROM_SOUTH)
                ? Bearing.ofAzimuthFromSouth(angle(text.substring(FROM_SOUTH.length())))
                : Bearing.parse(text);
    }

    private static String text(Bearing bearing) {
        String text = bearing.toString();
        return Bearing.parse(text).equals(bearing) ? text : FROM_NORTH + text(bearing.azimuth());
    }

    private static Slope slope(String text) {
        return text.endsWith(RISE_OVER_RUN)
                ? Slope.ofPercent(100).times(number(text, RISE_OVER_RUN))
                : Slope.parse(text);
    }

    private static String text(Slope slope) {
        String text = slope.toString();
        return text.length() <= LONGEST && Slope.parse(text).equals(slope)
                ? text
                : exact(slope.ratio().value()) + " " + RISE_OVER_RUN;
    }

    private static double number(String text, String unit) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.matches() || !matcher.group(2).equals(unit)) {
            throw new IllegalArgumentException("\"" + text + "\" was not a number and " + unit);
        }
        return Double.parseDouble(matcher.group(1));
    }

    private static String exact(double value) {
        String plain = new BigDecimal(Double.toString(value)).toPlainString();
        return plain.length() <= LONGEST / 2 ? plain : Double.toString(value);
    }

    /** A unit that a quantity is read and written in. */
    private record Unit<M>(String name, DoubleFunction<M> of, ToDoubleFunction<M> in) {

        String with(String number) {
            return name.isEmpty() ? number : number + " " + name;
        }
    }

    private static <M> Unit<M> unit(String name, DoubleFunction<M> of, ToDoubleFunction<M> in) {
        return new Unit<>(name, of, in);
    }

    /** A quantity in one of some units, the last of them that which it holds. */
    @SafeVarargs
    @SuppressWarnings("varargs") // they are only gone through
    private static <M> Form<M> measure(String name, String about, String example, Unit<M>... given) {
        List<Unit<M>> units = List.of(given);
        String names =
                units.stream().map(Unit::name).filter(unit -> !unit.isEmpty()).collect(Collectors.joining(", "));
        return text(
                name,
                about + " Units: " + names + (units.get(units.size() - 1).name().isEmpty() ? ", or none." : "."),
                List.of(example),
                text -> measured(name, text, units, names),
                value -> written(value, units));
    }

    private static <M> M measured(String name, String text, List<Unit<M>> units, String names) {
        Matcher matcher = NUMBER.matcher(text.strip());
        if (matcher.matches()) {
            for (Unit<M> unit : units) {
                if (unit.name().equals(matcher.group(2))) {
                    return unit.of().apply(Double.parseDouble(matcher.group(1)));
                }
            }
        }
        throw new IllegalArgumentException(
                name + " \"" + text + "\" cannot be read; it must be a number and one of the units " + names);
    }

    private static <M> String written(M value, List<Unit<M>> units) {
        for (Unit<M> unit : units) {
            double in = unit.in().applyAsDouble(value);
            if (!Double.isFinite(in)) {
                continue; // too much of a smaller unit
            }
            String number = new BigDecimal(in)
                    .round(new MathContext(10))
                    .stripTrailingZeros()
                    .toPlainString();
            if (number.length() <= LONGEST / 2
                    && unit.of().apply(Double.parseDouble(number)).equals(value)) {
                return unit.with(number);
            }
        }
        Unit<M> held = units.get(units.size() - 1);
        return held.with(exact(held.in().applyAsDouble(value)));
    }

    private static <T> Form<T> text(
            String name, String about, List<String> examples, Function<String, T> parse, Function<T, String> write) {
        return new Form<>() {
            @Override
            T read(Place place) {
                String text = place.text("a text such as \"" + examples.get(0).replace("\"", "\\\"") + "\"");
                if (text.length() > LONGEST) {
                    throw place.refusal(name + " has " + text.length() + " characters; it may have at most " + LONGEST);
                }
                return place.make(() -> parse.apply(text));
            }

            @Override
            Object write(T value) {
                return write.apply(value);
            }

            @Override
            Map<String, Object> schema(Definitions definitions) {
                return definitions.reference(name, this, () -> {
                    Map<String, Object> schema = new LinkedHashMap<>();
                    schema.put("description", about);
                    schema.put("type", "string");
                    schema.put("minLength", 1);
                    schema.put("maxLength", LONGEST);
                    schema.put("examples", examples);
                    return schema;
                });
            }
        };
    }
}
