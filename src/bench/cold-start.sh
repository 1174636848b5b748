#!/usr/bin/env bash
# Times whole runs on one sheet against a bare virtual machine, all in turn so that a busy machine is busy for each alike:
#   src/bench/cold-start.sh [rounds [sheet]]
# Build first: mvn -q -B -ntp -DskipTests package. JAVA_HOME chooses the Java, as it does for the launcher.
set -euo pipefail
cd "$(dirname "$0")/../.."

rounds=${1:-10}
sheet=${2:-scenarios/touring.yaml}
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
launcher=target/fitworthy/bin/fitworthy
jar=$(echo target/fitworthy/lib/fitworthy-*.jar)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

mkdir "$work/classes"
echo 'class Bare { public static void main(String[] a) { System.out.println("bare"); } }' >"$work/classes/Bare.java"
"${java}c" -d "$work/classes" "$work/classes/Bare.java"

# Exit codes 0 and 1 are advice; anything else is no run to measure.
timed() {
    local name=$1
    shift
    TIMEFORMAT='%R %U %S'
    { time { "$@" >"$work/out" 2>&1 || [ $? -eq 1 ]; }; } 2>>"$work/$name" || { cat "$work/out"; exit 1; }
}
first() { FITWORTHY_CACHE=$(mktemp -d -p "$work")/cache "$launcher" check "$sheet"; }
cached() { "$java" -cp "$jar" fitworthy.cli.Main check "$sheet"; }
launched() { "$launcher" check "$sheet"; }

# Three runs fill the cache: one compiles the rules as the plain one reads them, one as the launcher does, one archives.
export FITWORTHY_CACHE=$work/warm
for fill in cached launched launched; do
    timed filling "$fill"
done
for ((round = 0; round < rounds; round++)); do
    timed bare "$java" -cp "$work/classes" Bare
    timed cached cached
    timed launched launched
    timed first first
done

"$java" -version 2>&1 | sed -n 2p
echo "$(nproc) cores, load $(cut -d' ' -f1-3 /proc/loadavg), $rounds rounds, $sheet"
median() { sort -n | awk '{ v[NR] = $1 } END { print (v[int((NR + 1) / 2)] + v[int(NR / 2) + 1]) / 2 }'; }
bare=$(cut -d' ' -f1 "$work/bare" | median)
busy=$(awk '{ print $2 + $3 }' "$work/bare" | median)
printf '%-10s %8s %8s %8s %8s %10s\n' run median least most ratio 'CPU ratio'
for name in bare cached launched first; do
    wall=$(cut -d' ' -f1 "$work/$name" | median)
    cpu=$(awk '{ print $2 + $3 }' "$work/$name" | median)
    cut -d' ' -f1 "$work/$name" | sort -n | awk -v name="$name" -v wall="$wall" -v bare="$bare" -v cpu="$cpu" -v busy="$busy" '
        NR == 1 { least = $1 } END { printf "%-10s %6.0fms %6.0fms %6.0fms %8.1f %10.1f\n", name, wall * 1000, least * 1000,
            $1 * 1000, wall / bare, cpu / busy }'
done
