# Reads what a benchmark run printed and gives each program's time as a multiple of the baseline "doubles" of the same
# benchmark and size: by the median of all iterations, and by the quickest one, which other work on the machine disturbs
# least.
#
# java -jar benchmarks/target/benchmarks.jar LengthAddition | tee run.txt
# awk -f benchmarks/ratios.awk run.txt
/^# Benchmark:/ {
    parts = split($3, path, ".")
    group = path[parts - 1]
    program = path[parts]
}
/^# Parameters:/ {
    group = group " " $5
    sub(/\)$/, "", group)
}
/^Iteration/ {
    sub(/^Iteration +[0-9]+: /, "")
    key = group SUBSEP program
    if (!(key in count)) {
        keys[++rows] = key
    }
    at = ++count[key]
    while (at > 1 && times[key, at - 1] > $1 + 0) {
        times[key, at] = times[key, at - 1]
        at--
    }
    times[key, at] = $1 + 0
}
END {
    printf "%-32s %-20s %10s %10s\n", "benchmark, ft of fence", "program", "median", "quickest"
    for (row = 1; row <= rows; row++) {
        split(keys[row], name, SUBSEP)
        base = name[1] SUBSEP "doubles"
        if (base in count) {
            printf "%-32s %-20s %10.2f %10.2f\n", name[1], name[2], median(keys[row]) / median(base), \
                times[keys[row], 1] / times[base, 1]
        }
    }
}
function median(key) {
    return times[key, int((count[key] + 1) / 2)]
}
