#!/usr/bin/env bash
# Checks sheets on Apache Spark in local mode, and the same sheets with 'fitworthy batch', and holds one against the other:
#   src/spark/run.sh [sheets]
# The sheets are the shipped ones and the plain one, varied; there are 100000 of them unless told otherwise.
set -euo pipefail
cd "$(dirname "$0")/../.."

count=${1:-100000}
work=target/spark
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
mkdir -p "$work/classes"
mvn -q -B -ntp -DskipTests package
mvn -q -B -ntp -Pspark dependency:copy-dependencies -DincludeScope=runtime -DoutputDirectory="$work/lib"
jar=$(echo target/fitworthy/lib/fitworthy-*.jar)
"${java}c" -proc:none -d "$work/classes" -cp "$jar:$work/lib/*" src/spark/Sheets.java
"$java" -cp "$jar:$work/lib/*" src/spark/Make.java "$count" "$work/sheets"

# Modules that Spark reaches into and that Java 17 and later have closed.
open=()
for each in java.lang java.lang.invoke java.lang.reflect java.io java.net java.nio java.util java.util.concurrent \
    java.util.concurrent.atomic sun.nio.ch sun.nio.cs sun.security.action sun.util.calendar; do
    open+=("--add-opens=java.base/$each=ALL-UNNAMED")
done

echo "batch, one process:"
begin=$(date +%s.%N)
cat "$work"/sheets/* | target/fitworthy/bin/fitworthy batch - >"$work/batch.ndjson" || [ $? -eq 1 ]
end=$(date +%s.%N)
awk -v n="$count" -v b="$begin" -v e="$end" 'BEGIN { printf "%d sheets in %.1f s, %.0f a second\n", n, e - b, n / (e - b) }'

echo "Spark, local mode:"
rm -rf "$work/answers"
"$java" "${open[@]}" -Xmx2g -cp "$work/classes:$jar:$work/lib/*" Sheets "$work/sheets" "$work/answers" rules "$work/cache"
cat "$work"/answers/part-* | cmp - "$work/batch.ndjson" && echo "the answers are the same, byte for byte"
