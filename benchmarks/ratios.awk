# Prints each score of a JMH csv file as a multiple of the baseline "doubles" of the same benchmark and parameter.
# awk -f benchmarks/ratios.awk results.csv
BEGIN { FS = "," }
NR > 1 {
    gsub(/"/, "")
    sub(/\r$/, "")
    if ($1 ~ /:/) {
        next # a profiler's line
    }
    name = $1
    sub(/.*\./, "", name)
    group = $1
    sub(/\.[^.]*$/, "", group)
    sub(/.*\./, "", group)
    group = group (NF > 7 && $8 != "" ? " " $8 " ft" : "")
    groups[NR] = group
    names[NR] = name
    scores[NR] = $5
    if (name == "doubles") {
        baseline[group] = $5
    }
}
END {
    for (row = 2; row <= NR; row++) {
        if (row in groups) {
            printf "%-40s %-22s %12.2f\n", groups[row], names[row], scores[row] / baseline[groups[row]]
        }
    }
}
