#!/bin/sh
# Stands before rustc: our own code alone is compiled with counters, so that the libraries are built as ever.
# COUNTERS: fuzz (for libFuzzer) or lines (for the report of what was reached).
rustc=$1
shift
case "$*" in
  *"--crate-name gapwright "* | *"--crate-name gapwright_fuzz "*) ;;
  *) exec "$rustc" "$@" ;;
esac
case "$COUNTERS" in
  lines) exec "$rustc" "$@" -Cinstrument-coverage ;;
  *) exec "$rustc" "$@" -Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=3 \
       -Cllvm-args=-sanitizer-coverage-inline-8bit-counters -Cllvm-args=-sanitizer-coverage-pc-table \
       -Cllvm-args=-sanitizer-coverage-trace-compares ;;
esac
