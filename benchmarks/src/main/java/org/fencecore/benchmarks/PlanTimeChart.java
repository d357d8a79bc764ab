package org.fencecore.benchmarks;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.style.Styler;

/**
 * Draws how long a plan takes against how long the fence is, both in powers of ten, from what {@link WholePlanBenchmark}
 * measured.
 *
 * <pre>
 * java -jar benchmarks/target/benchmarks.jar WholePlan -rf csv -rff benchmarks/plan-time.csv
 * java -cp benchmarks/target/benchmarks.jar org.fencecore.benchmarks.PlanTimeChart benchmarks/plan-time.csv benchmarks/plan-time.png
 * </pre>
 */
public final class PlanTimeChart {

    private static final Map<String, String> LINES = lines();

    private PlanTimeChart() {}

    /** Which benchmark is which line of the chart, in the order of the legend. */
    private static Map<String, String> lines() {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("planAndAsk", "with all that is put off, findings in words among it");
        lines.put("planAndFigures", "with the figures of the plain program");
        lines.put("plan", "plan");
        lines.put("doubles", "plain program");
        return lines;
    }

    /**
     * Draws the chart.
     *
     * @param args the file of measurements, and that of the picture, a PNG
     * @throws IOException if one cannot be read or the other not written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            throw new IllegalArgumentException(
                    "there were " + args.length + " arguments; give the CSV file of measurements and the PNG file");
        }
        ImageIO.write(
                draw(times(Files.readAllLines(Path.of(args[0])))),
                "png",
                Path.of(args[1]).toFile());
    }

    /**
     * Reads the times in microseconds by benchmark and length in feet.
     *
     * @param csv the lines of a file that JMH wrote
     * @throws IllegalArgumentException if a line is not one of the whole plan's
     */
    static Map<String, NavigableMap<Integer, Double>> times(List<String> csv) {
        List<String> names = fields(csv.get(0));
        Map<String, NavigableMap<Integer, Double>> times = new LinkedHashMap<>();
        for (String line : csv.subList(1, csv.size())) {
            List<String> fields = fields(line);
            String benchmark = fields.get(names.indexOf("Benchmark"));
            if (!fields.get(names.indexOf("Unit")).equals("us/op") || !names.contains("Param: feet")) {
                throw new IllegalArgumentException(
                        "the measurement was " + line + "; give those of WholePlanBenchmark, in us/op");
            }
            times.computeIfAbsent(benchmark.substring(benchmark.lastIndexOf('.') + 1), unseen -> new TreeMap<>())
                    .put(
                            Integer.valueOf(fields.get(names.indexOf("Param: feet"))),
                            Double.valueOf(fields.get(names.indexOf("Score"))));
        }
        return times;
    }

    private static List<String> fields(String line) {
        return List.of(line.replace("\"", "").split(",", -1));
    }

    private static BufferedImage draw(Map<String, NavigableMap<Integer, Double>> times) {
        XYChart chart = new XYChartBuilder()
                .width(900)
                .height(560)
                .title("Time to plan a fence")
                .xAxisTitle("length of fence, ft")
                .yAxisTitle("microseconds")
                .build();
        chart.getStyler().setXAxisLogarithmic(true);
        chart.getStyler().setYAxisLogarithmic(true);
        chart.getStyler().setXAxisDecimalPattern("#,###");
        chart.getStyler().setYAxisDecimalPattern("#,###");
        chart.getStyler().setLegendPosition(Styler.LegendPosition.InsideNW);
        chart.getStyler().setChartBackgroundColor(Color.WHITE);
        LINES.forEach((benchmark, name) -> {
            NavigableMap<Integer, Double> line = times.get(benchmark);
            if (line != null) {
                chart.addSeries(name, new ArrayList<>(line.keySet()), new ArrayList<>(line.values()));
            }
        });
        BufferedImage picture = new BufferedImage(chart.getWidth(), chart.getHeight(), BufferedImage.TYPE_INT_RGB);
        chart.paint(picture.createGraphics(), chart.getWidth(), chart.getHeight());
        return picture;
    }
}
