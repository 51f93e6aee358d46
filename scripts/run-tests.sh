#!/bin/sh
# Everything that must pass: format and floors, types, tests (which check every record and published value), the built site in a browser.
# Every step runs, whatever became of the one before, so that one run shows all that is wrong; the exit code tells whether anything was.
. "$(dirname "$0")/prepare.sh"

reports=.kerf/reports
rm -rf "$reports"
mkdir -p "$reports"
. scripts/step.sh

find_browser() {
  if [ -n "$CHROMIUM_PATH" ]; then
    [ -x "$CHROMIUM_PATH" ] && return 0
    echo "CHROMIUM_PATH is $CHROMIUM_PATH, which is not a program. Correct or unset it." >&2
    return 1
  fi
  for browser in chromium chromium-browser google-chrome google-chrome-stable chrome; do
    command -v "$browser" >/dev/null 2>&1 && return 0
  done
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends chromium
    return $?
  fi
  echo "No Chromium was found. On Debian: apt-get install chromium. Elsewhere: set CHROMIUM_PATH to the path of one." >&2
  return 1
}

run_vitest() {
  report=$1
  shift
  npx vitest run --reporter=default --reporter=json --outputFile.json="$reports/$report.json" "$@"
}

step generated npm run -s generate -- --check
step lint npm run -s lint
# What is generated was written a moment ago.
step typecheck npm run -s types
# Random addresses in a step of their own; KERF_RUNS=10000 tries many more, and takes some six minutes on two cores.
step unit run_vitest unit --project node --project happy-dom
KERF_RUNS=${KERF_RUNS:-2000}
export KERF_RUNS
step addresses run_vitest addresses --project addresses
if step build npm run -s build:site && step browser-install find_browser; then
  PLAYWRIGHT_JSON_OUTPUT_NAME="$reports/browser.json"
  export PLAYWRIGHT_JSON_OUTPUT_NAME
  step browser npx playwright test --reporter=list,json
fi

node scripts/tally.mjs "$reports" $failed
