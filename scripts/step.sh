# Sourced by the test command: runs its steps. `reports` is the folder of what they print, `failed` names those that failed.
failed=""

# What a step prints is kept too: where it fails without a failed test, the end of the run shows its last lines. Its command runs apart, so that
# nothing that it sets is set here.
step() {
  name=$1
  shift
  printf '\n== %s\n' "$name"
  { ("$@") && touch "$reports/$name.ok"; } 2>&1 | tee "$reports/$name.log"
  [ -e "$reports/$name.ok" ] && return 0
  failed="$failed $name"
  return 1
}
