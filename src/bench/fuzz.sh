#!/usr/bin/env bash
# Gives bytes that a coverage-guided fuzzer makes up to the readers of sheets, shelves, house files and the rule book:
#   src/bench/fuzz.sh sheet|shelf|house|book [runs [seconds]]
# It begins from the corpus in src/test/resources/corpus and the shipped files. An input that takes two seconds of processor time, more than 256 MiB or
# ends in anything but advice or faults is kept as target/fuzz/<reader>/crash-*, and the run fails.
set -euo pipefail
cd "$(dirname "$0")/../.."

reader=${1:?sheet, shelf, house or book}
runs=${2:-200000}
seconds=${3:-3600}
work=target/fuzz/$reader
mkdir -p "$work/found"

# Jazzer is fetched here and by nothing else: neither the build nor the program knows it.
mvn -q -B -ntp test-compile dependency:build-classpath -Dmdep.outputFile=target/fuzz/classpath
mvn -q -B -ntp dependency:copy -Dartifact=com.code-intelligence:jazzer:0.24.0 -DoutputDirectory=target/fuzz/lib
mvn -q -B -ntp dependency:copy -Dartifact=com.code-intelligence:jazzer-api:0.24.0 -DoutputDirectory=target/fuzz/lib

# Words of the sheet, its units and the book, so that the fuzzer need not find them letter by letter.
grep -ohE '[a-z][a-z.-]+|[0-9.]+ [a-zA-Z/%]+' docs/sheet.md docs/house.md | sort -u | sed 's/.*/"&"/' >"$work/words"

case $reader in
    sheet)
        target=fitworthy.fuzz.SheetFuzz
        cp rules/plain-sheet.yaml scenarios/weekender.yaml "$work/found"
        ;;
    shelf)
        target=fitworthy.fuzz.ShelfFuzz
        cp scenarios/shelf/*.yaml "$work/found"
        ;;
    house)
        target=fitworthy.fuzz.HouseFuzz
        ;;
    book)
        target=fitworthy.engine.BookFuzz
        number=0
        for file in book.yaml sources.yaml mass/cards.yaml mass/practice.yaml tables/load-index.csv tables/speed-symbol.csv \
            tables/cable.csv tables/order.csv mass/mass.drl; do
            { printf "\\x0$number"; cat "rules/$file"; } >"$work/found/$(basename "$file")"
            number=$((number + 1))
        done
        ;;
esac

exec "${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xmx256m -cp "target/test-classes:target/classes:$(cat target/fuzz/classpath):target/fuzz/lib/*" \
    com.code_intelligence.jazzer.Jazzer --target_class="$target" --instrumentation_includes='fitworthy.**' \
    --instrumentation_excludes='fitworthy.compiled.**' --custom_hook_includes='fitworthy.**' \
    --custom_hook_excludes='fitworthy.compiled.**' --keep_going=20 \
    --reproducer_path="$work" -artifact_prefix="$work/" -dict="$work/words" -runs="$runs" -max_total_time="$seconds" -max_len=8000 \
    -timeout=60 -rss_limit_mb=4096 -print_final_stats=1 "$work/found" src/test/resources/corpus/"$reader"
