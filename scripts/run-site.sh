#!/bin/sh
# Installs what is missing, builds the site and serves it until it is stopped. Arguments go to the server, for example --port 8080.
. "$(dirname "$0")/prepare.sh"

npm run -s build && exec npm run -s serve -- "$@"
