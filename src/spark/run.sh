#!/usr/bin/env bash
# Checks sheets on Apache Spark, holds the answers against those of 'fitworthy batch', and measures what it costs:
#   src/spark/run.sh [sheets [what...]]
# The sheets are the shipped ones and the plain one, varied; there are 100000 of them unless told otherwise. What is tried,
# all of it unless named:
#   threads   one virtual machine with two threads
#   one       one executor of one core, a process of its own to which the program and the book are sent
#   two       two of them, and in all that follows
#   parquet   from Parquet into Parquet
#   skewed    nine sheets of ten in one compressed file, which one task has to read
#   spread    the same, the sheets sent about before they are looked at
#   heavy     a tenth of the sheets with a thousand pieces of cargo each, one after the other
#   killed    one of the two killed while it works
set -euo pipefail
cd "$(dirname "$0")/../.."

count=${1:-100000}
tried=${*:2}
work=target/spark
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
rm -rf "$work"
mkdir -p "$work/classes"
mvn -q -B -ntp -DskipTests package
mvn -q -B -ntp -Pspark dependency:copy-dependencies -DincludeScope=runtime -DoutputDirectory="$work/jars"
program=$(echo target/fitworthy/lib/fitworthy-*.jar)
"${java}c" -proc:none -d "$work/classes" -cp "$program:$work/jars/*" src/spark/*.java
"${java/%java/jar}" cf "$work/sheets.jar" -C "$work/classes" .

# An executor finds Spark here. What the program needs beyond that is sent to it; what both need, Spark has.
export SPARK_HOME=$PWD/$work SPARK_SCALA_VERSION=2.13
sent=$work/sheets.jar
for each in target/fitworthy/lib/*.jar; do
    case ${each##*/} in
        jackson-* | slf4j-* | snakeyaml-* | commons-codec-*) ;;
        *)
            rm -f "$work/jars/${each##*/}"
            sent=$sent,$each
            ;;
    esac
done

# Modules that Spark reaches into and that Java 17 and later have closed.
open=()
for each in java.lang java.lang.invoke java.lang.reflect java.io java.net java.nio java.util java.util.concurrent \
    java.util.concurrent.atomic sun.nio.ch sun.nio.cs sun.security.action sun.util.calendar; do
    open+=("--add-opens=java.base/$each=ALL-UNNAMED")
done

# Of a run and all processes that it starts.
TIMEFORMAT='  %R s by the clock, %U s of processor time and %S s of the system'

make() { "$java" -cp "$work/classes:$work/jars/*:${sent//,/:}" Make "$@"; }

# The answers to the sheets of a folder, by 'batch'.
batch() { zcat -f "$1"/* | target/fitworthy/bin/fitworthy batch - >"$2" || [ $? -eq 1 ]; }

# Where Spark runs, and what.
spark() {
    "$java" "${open[@]}" -Xmx2g -Dspark.master="$1" -Dspark.jars="$sent" -Dspark.executor.memory=1g \
        -cp "$work/jars/*:${sent//,/:}" "${@:2}"
}

asked() { [ -z "$tried" ] || [[ " $tried " = *" $1 "* ]]; }

# What is tried: its name, where Spark runs, the sheets, the answers that are right, and a property.
try() {
    local answers=$work/answers
    asked "$1" || return 0
    [[ $3 = *.parquet ]] && answers=$work/answers.parquet
    rm -rf "$work/answers" "$work/answers.parquet"
    echo "$1:"
    time spark "$2" "${@:5}" Sheets "$3" "$answers" rules "$work/cache"
    if [ "$answers" != "$work/answers" ]; then
        du -sh --apparent-size "$3" "$answers" | sed 's/^/  /'
        spark 'local[2]' Lines "$answers" "$work/answers"
    fi
    cat "$work"/answers/part-* | cmp - "$4" && echo '  the answers are the same, byte for byte'
}

# Kills an executor once four tasks have written their answers.
kill_one() {
    until [ "$(find "$work/answers" -path '*_temporary/0/task_*' -name 'part-*' 2>/dev/null | wc -l)" -ge 4 ]; do
        sleep 0.2
    done
    kill -KILL "$(pgrep -n -P "$(pgrep -x -P $$ java)")" && echo '  one is killed'
}

two=local-cluster[2,1,1024]
right=$work/batch.ndjson
make "$count" "$work/sheets"
echo 'batch, one process:'
time batch "$work/sheets" "$right"
try threads 'local[2]' "$work/sheets" "$right"
try one 'local-cluster[1,1,1024]' "$work/sheets" "$right"
try two "$two" "$work/sheets" "$right"

if asked killed; then
    kill_one &
fi
try killed "$two" "$work/sheets" "$right"

mkdir "$work/skewed"
files=("$work"/sheets/*)
cat "${files[@]::9}" | gzip >"$work/skewed/sheets-0.ndjson.gz"
cp "${files[@]:9}" "$work/skewed"
try skewed "$two" "$work/skewed" "$right"
try spread "$two" "$work/skewed" "$right" -Dspread=true

if asked parquet; then
    spark 'local[2]' Lines "$work/sheets" "$work/sheets.parquet"
fi
try parquet "$two" "$work/sheets.parquet" "$right"

if asked heavy; then
    make "$count" "$work/heavy" heavy
    batch "$work/heavy" "$work/heavy.ndjson"
fi
try heavy "$two" "$work/heavy" "$work/heavy.ndjson"
