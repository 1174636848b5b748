#!/usr/bin/env bash
# Builds the archive and the image here and in a clone elsewhere, and tells whether they are the same, byte for byte:
#   src/bench/same-bytes.sh
# What is not committed is in the one alone.
set -euo pipefail
cd "$(dirname "$0")/../.."

clone=$(mktemp -d)
trap 'rm -rf "$clone"' EXIT
git clone -q . "$clone"
sums() {
    cd "$1"
    mvn -q -B -ntp -Dmaven.test.skip=true -Pdist,image clean package >&2
    cd target
    sha256sum ./*.zip ./*.tar.gz
}
here=$(sums "$PWD")
diff <(echo "$here") <(sums "$clone") && echo "the same: $here"
