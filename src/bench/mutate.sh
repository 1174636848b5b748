#!/usr/bin/env bash
# Mutation testing, a package at a time, each by the tests and cases that are about it: the table is below.
#
#     src/bench/mutate.sh                         all of it
#     src/bench/mutate.sh figures.water advice    these packages
#     MOST=20 src/bench/mutate.sh search          at most twenty mutants of each class, spread over it
#
# The reports are in target/mutation. A second run takes over what neither class nor test has changed for.
set -euo pipefail
cd "$(dirname "$0")/../.."

# Those of the package that are fast; the others run over every case of the book, or over plans that nobody wrote.
advice=
for about in Advice Adviser Arrangement Explanation HouseUse KnownSituations Margin MissingFigure Outcome View Waiving; do
    advice="$advice advice.${about}Test"
done

# What is changed; the topics whose cases are run; the tests, of which "own" are all of the package.
table="
figures.Measures     mass+across  figures.MeasuresTest
figures.measure      mass         own figures.plan.ToleranceTest
figures.plan         mass+towing+tyres+electrical+paperwork own
figures.across       across       own
figures.body         body         own
figures.electrical   electrical   own
figures.front        front        own
figures.fuel         fuel         own
figures.intake       intake       own
figures.mass         mass
figures.mirrors      mirrors      own
figures.order        order        own
figures.paperwork    paperwork
figures.radio        radio        own
figures.recovery     recovery     own
figures.suspension   suspension   own
figures.towing       towing       own
figures.tyres        tyres        own
figures.water        water        own
rules                mass         own engine.HostileRulesTest
engine               water        engine.BookPageCacheTest engine.BudgetTest engine.CacheFolderTest engine.HostileRulesTest engine.RuleCacheTest engine.RuleCompilerTest engine.RuleEngineTest engine.ShippedNotesTest
advice               water+mass   $advice
search               -            own
"
asked=${*:-$(awk '{print $1}' <<<"$table")}
mkdir -p target/mutation
mvn -q -B -ntp -Pmutation test-compile
printf '%-20s %8s %8s %8s %8s %8s\n' package mutants killed lived unseen seconds
while read -r package topics tests; do
    grep -qx -- "${package:-nothing}" <<<"${asked// /$'\n'}" || continue
    by=fitworthy.proof.CasesByTopic
    [ "$topics" = - ] && by=
    for test in $tests; do
        [ "$test" = own ] && test="$package.*Test"
        by=$by,fitworthy.$test
    done
    begun=$SECONDS
    report=target/mutation/$package
    mvn -q -B -ntp -Pmutation org.pitest:pitest-maven:mutationCoverage -Dmutated="$package" -Dby="${by#,}" -Dtopics="$topics" \
        ${MOST:+"-Dfeatures=+CLASSLIMIT(limit[$MOST])"} >"$report.log" 2>&1 || { tail -n 20 "$report.log"; exit 1; }
    count() { grep -Eoc "status='($1)'" "$report/mutations.xml" || true; }
    printf '%-20s %8d %8d %8d %8d %8d\n' "$package" "$(count '[A-Z_]+')" "$(count 'KILLED|TIMED_OUT|MEMORY_ERROR|RUN_ERROR')" \
        "$(count SURVIVED)" "$(count NO_COVERAGE)" $((SECONDS - begun))
done <<<"$table"
