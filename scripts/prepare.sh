# Sourced by the other scripts: goes to the project folder and installs the packages of the lock file where they are missing or older.
cd "$(dirname "$0")/.." || exit 1

if ! command -v npm >/dev/null 2>&1; then
  echo "Node with npm is needed, version 20.19 or newer: install it, then run this again." >&2
  exit 1
fi

if [ ! -f node_modules/.package-lock.json ] || [ package-lock.json -nt node_modules/.package-lock.json ]; then
  npm ci --no-audit --no-fund || exit 1
fi
