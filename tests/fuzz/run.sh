#!/usr/bin/env bash
# Coverage-guided fuzzing with libFuzzer, on the stable toolchain. Needs a C++ compiler.
#   tests/fuzz/run.sh all 1000000        every reader so often (the long ones less: see below)
#   tests/fuzz/run.sh job 1000000        one reader
#   tests/fuzz/run.sh report             which lines of the readers what was found reaches
# What was found is kept in FUZZ_FOLDER (target/fuzz by default), and so are failures.
set -euo pipefail
cd "$(dirname "$0")"
readers=(entries job prices logger weather dxf svg corners tables page template assessed)
target=${CARGO_TARGET_DIR:-../../target}
folder=$(realpath -m "${FUZZ_FOLDER:-$target/fuzz}")

build() {
  # The libraries are those of the program.
  [ -f Cargo.lock ] || cp ../../Cargo.lock .
  CARGO_TARGET_DIR="$target/fuzz-$1" COUNTERS=$1 RUSTC_WRAPPER="$PWD/instrument.sh" cargo build --release --quiet
}

# What each reader starts from: files that are sound.
seeds() {
  local to="$folder/$1"
  mkdir -p "$to"
  case "$1" in
    job | assessed) cp ../../examples/*.ron ../jobs/files/version*.ron "$to" ;;
    prices) cp ../jobs/files/shelf.ron "$to" ;;
    logger) printf 'Date,Time,Temp C,RH %%\n05.01.2026,00:00,20.5,33\n13.01.2026,01:00,20.3,34\n' >"$to/a.csv"
      printf '"No","Date Time","Room 1 RH"\n1,1/2/2026 1:00 PM,40\n2,1/13/2026 2:00 PM,42\n' >"$to/b.csv" ;;
    weather) printf '724940,"SOMEWHERE",CA,-8.0,37.617,-122.400,2\nDate (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%%)' >"$to/a.csv"
      printf 'LOCATION,Somewhere,CA,USA,TMY3,724940,37.62,-122.40,-8.0,2.0' >"$to/b.epw" ;;
    dxf) cp ../numbers/outlines/*.dxf "$to" ;;
    svg) cp ../numbers/outlines/*.svg "$to" ;;
    corners) cp ../numbers/outlines/*.csv "$to" ;;
    tables) printf 'joint,gap,bead,at\nA 2,1/8,torn,\nA 3,3 mm,,1 ft\n' >"$to/a.csv"
      printf 'section,moisture,wood_temperature,date\nA,9.5,70,2026-02-14\n' >"$to/b.csv" ;;
    entries) for text in "5-1/8" "7' 3-1/2\"" "130 mm" "1,5 m" "2026-02-14" "14 Feb 2026" "½"; do
        printf '%s' "$text" >"$to/$(printf '%s' "$text" | md5sum | cut -c1-8)"; done ;;
    template) cp ../../assets/papers/crew-card.typ "$to" ;;
    page) cp ../../assets/papers/owner-page.html "$to" ;;
  esac
}

# A second and a gigabyte are the most that one file may take.
fuzz() {
  seeds "$1"
  mkdir -p "$folder/failures"
  READER=$1 "$target/fuzz-fuzz/release/gapwright-fuzz" "$folder/$1" -runs="$2" -timeout=1 -rss_limit_mb=2000 \
    -malloc_limit_mb=1000 -max_len=20000 -print_final_stats=1 -artifact_prefix="$folder/failures/$1-" \
    >"$folder/$1.log" 2>&1 || { tail -30 "$folder/$1.log"; return 1; }
  grep -E "cov:|stat::(number_of_executed|average_exec|peak_rss|slowest)" "$folder/$1.log" | tail -5
}

# Lines reached by all that was kept, in the files that read.
report() {
  build lines
  local tools profile=$folder/profile
  tools=$(dirname "$(find "$(rustc --print sysroot)" -name llvm-profdata | head -1)")
  mkdir -p "$profile"
  for reader in "${readers[@]}"; do
    [ -d "$folder/$reader" ] || continue
    READER=$reader LLVM_PROFILE_FILE="$profile/$reader.profraw" \
      "$target/fuzz-lines/release/gapwright-fuzz" "$folder/$reader" -runs=0 >/dev/null 2>&1 || true
  done
  "$tools/llvm-profdata" merge -sparse "$profile"/*.profraw -o "$profile/all.profdata"
  "$tools/llvm-cov" report "$target/fuzz-lines/release/gapwright-fuzz" -instr-profile="$profile/all.profdata" \
    -show-region-summary=false -show-branch-summary=false ../../src/job ../../src/air/logger ../../src/air/weather \
    ../../src/surface/outlines ../../src/measure ../../src/papers
}

case "${1:-}" in
  report) report ;;
  all)
    build fuzz
    for reader in "${readers[@]}"; do
      runs=${2:-100000}
      # Typesetting and assessing take milliseconds, not microseconds.
      case "$reader" in page | template | assessed) runs=$((runs / 100)) ;; esac
      echo "== $reader, $runs runs"
      fuzz "$reader" "$runs"
    done
    ;;
  "") echo "usage: $0 READER RUNS | all RUNS | report" >&2; exit 2 ;;
  *) build fuzz; fuzz "$1" "${2:-100000}" ;;
esac
