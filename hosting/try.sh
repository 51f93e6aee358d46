#!/bin/sh
# What nginx and Apache answer with the files of this folder: `sh hosting/try.sh build`, or `sh hosting/try.sh build /boards/` for a site that was
# built for a sub-folder. Runs both on this machine alone, on ports of their own, from a folder that is taken away at the end. Asks for the programs
# nginx, apache2 and curl: on Debian, apt-get install nginx-light apache2 curl.
set -u
build=${1:-build}
folder=${2:-/}
here=$(cd "$(dirname "$0")" && pwd)
[ -f "$build/404.html" ] || { echo "$build holds no built site: it has no 404.html. Build it first: npm run build" >&2; exit 1; }
case $folder in /*/ | /) ;; *) echo "The folder is $folder; it begins and ends with a slash, as /boards/." >&2; exit 1 ;; esac
# Programs of administrators are not on everybody's path.
PATH=$PATH:/usr/sbin:/sbin
for program in nginx apache2 curl; do
  command -v "$program" >/dev/null || { echo "$program is not there. On Debian: apt-get install nginx-light apache2 curl" >&2; exit 1; }
done

room=$(mktemp -d)
cleanup() {
  for pid in "$room"/*.pid; do [ -f "$pid" ] && kill "$(cat "$pid")" 2>/dev/null; done
  sleep 1
  rm -rf "$room"
}
trap cleanup EXIT
trap 'exit 1' INT TERM
mkdir -p "$room/www$folder" "$room/log" "$room/tmp"
cp -a "$build/." "$room/www$folder"
chmod -R a+rX "$room"
site=$room/www$folder
nginx_port=${NGINX_PORT:-8471}
apache_port=${APACHE_PORT:-8472}

# The file as it stands, but for the port, the place of the site and its folder.
sed -e "s#listen \[::\]:80;##" -e "s#listen 80;#listen 127.0.0.1:$nginx_port;#" \
  -e "s#/srv/kerf-and-cure/hosting/#${site}hosting/#" -e "s#root /srv/kerf-and-cure;#root $room/www;#" \
  -e "s#error_page 404 /404.html#error_page 404 ${folder}404.html#" "$here/nginx.conf" >"$room/site.conf"
[ "$(id -u)" = 0 ] && as_user="user root;" || as_user=""
cat >"$room/nginx.conf" <<END
$as_user
pid $room/nginx.pid;
error_log $room/log/nginx-error.log;
events {}
http {
  access_log off;
  default_type application/octet-stream;
  client_body_temp_path $room/tmp; proxy_temp_path $room/tmp; fastcgi_temp_path $room/tmp; uwsgi_temp_path $room/tmp; scgi_temp_path $room/tmp;
  include $room/site.conf;
}
END
nginx -c "$room/nginx.conf" || exit 1

modules=${APACHE_MODULES:-/usr/lib/apache2/modules}
load() { [ -f "$modules/mod_$1.so" ] && echo "LoadModule $1_module $modules/mod_$1.so"; }
{
  echo "ServerRoot $room"
  for name in mpm_event authz_core dir mime headers filter deflate brotli rewrite; do load $name; done
  cat <<END
ServerName localhost
PidFile $room/apache.pid
Listen 127.0.0.1:$apache_port
ErrorLog $room/log/apache-error.log
TypesConfig /etc/mime.types
DocumentRoot $room/www
<Directory $room/www>
  AllowOverride All
  Require all granted
</Directory>
END
} >"$room/apache.conf"
apache2 -f "$room/apache.conf" -k start || exit 1
sleep 1

failures=0
fail() { failures=$((failures + 1)); echo "  FAILED: $1"; }
one() { tr -d '\r' <"$room/head" | sed -n "s/^$1: *//Ip" | head -1; }

# ask <address below the folder> <status> <type> <encoding> <cache>: what is expected; - is anything, none is nothing.
ask() {
  curl -s -o /dev/null -D "$room/head" -H "Accept-Encoding: $accept" "http://127.0.0.1:$port$folder$1"
  status=$(sed -n '1s/^[^ ]* \([0-9]*\).*/\1/p' "$room/head")
  type=$(one content-type) encoding=$(one content-encoding) cache=$(one cache-control) to=$(one location)
  printf '%-7s %-34s %s  %-38s %-8s %s\n' "$server" "$folder$1" "$status" "${to:-$type}" "${encoding:--}" "$cache"
  [ "$status" = "$2" ] || fail "status $2 was expected"
  case $2 in
    301) [ "$(echo "$to" | sed 's#^http://[^/]*##')" = "$folder$3" ] || fail "to $folder$3 was expected" ; return ;;
  esac
  case $type in $3*) ;; *) fail "type $3 was expected" ;; esac
  case $4 in -) ;; none) [ -z "$encoding" ] || fail "no encoding was expected" ;; *) [ "$encoding" = "$4" ] || fail "encoding $4 was expected" ;; esac
  case $cache in $5*) ;; *) fail "to be kept: $5 was expected" ;; esac
  # Every header of the site stands in every answer, once.
  for name in $names; do
    [ "$(grep -ic "^$name:" "$room/head")" = 1 ] || fail "the header $name stands there $(grep -ic "^$name:" "$room/head") times"
  done
}

names=$(sed -n 's/^add_header \([^ ]*\) .*/\1/p' "${site}hosting/nginx-headers.conf")
asset() { (cd "$site" && find assets -name "$1" | sort | head -1); }
script=$(asset 'main.*.js') style=$(asset '*.css') font=$(asset '*.woff2')
for server in nginx apache; do
  case $server in nginx) port=$nginx_port best=gzip ;; apache) port=$apache_port best=br ;; esac
  [ "$server" = apache ] && [ ! -f "$modules/mod_brotli.so" ] && best=gzip
  accept="gzip, deflate, br"
  echo
  echo "server  address                            status type, or where to                       encoding kept"
  ask "" 200 "text/html; charset=utf-8" $best no-cache
  ask "woods/" 200 "text/html; charset=utf-8" $best no-cache
  ask "woods/?q=maple" 200 "text/html" $best no-cache
  ask "woods" 301 "woods/"
  ask "woods?q=maple" 301 "woods/?q=maple"
  ask "woods/index.html" 301 "woods/"
  ask "woods/index.html?q=maple" 301 "woods/?q=maple"
  ask "woods.html" 301 "woods/"
  ask "woods/white-ash.html?width=250+mm" 301 "woods/white-ash/?width=250+mm"
  ask "index.html" 301 ""
  ask "404.html" 200 "text/html" $best no-cache
  ask "no/such/page" 404 "text/html; charset=utf-8" $best no-cache
  ask "assets/js/no-such.0badf00d.js" 404 "text/html" - no-cache
  ask "$script" 200 "*/javascript; charset=utf-8" $best "public, max-age=31536000, immutable"
  ask "$style" 200 "text/css; charset=utf-8" $best "public, max-age=31536000, immutable"
  ask "$font" 200 "font/woff2" none "public, max-age=31536000, immutable"
  ask "fonts/kerf-book.woff2" 200 "font/woff2" none no-cache
  ask "search.json" 200 "application/json" $best no-cache
  ask "data/methods/first-tray.yaml" 200 "application/yaml; charset=utf-8" $best no-cache
  ask "data/hardness-domestic.csv" 200 "text/csv; charset=utf-8" $best no-cache
  ask "img/favicon.svg" 200 "image/svg+xml" - no-cache
  ask "sitemap.xml" 200 "*/xml" $best no-cache
  # Whatever of these the site has.
  for file in $(cd "$site" && ls *.webmanifest offline-worker.js 2>/dev/null); do
    case $file in *.webmanifest) ask "$file" 200 application/manifest+json - no-cache ;; *) ask "$file" 200 "*/javascript" - no-cache ;; esac
  done
  accept=identity
  ask "woods/" 200 "text/html" none no-cache
  accept=gzip
  ask "woods/" 200 "text/html" gzip no-cache
  # What is still the same is not sent again.
  tag=$(one etag) date=$(one last-modified)
  again=$(curl -s -o /dev/null -w '%{http_code}' -H "Accept-Encoding: gzip" ${tag:+-H "If-None-Match: $tag"} -H "If-Modified-Since: $date" "http://127.0.0.1:$port${folder}woods/")
  echo "$server  ${folder}woods/ asked for again: $again"
  [ "$again" = 304 ] || fail "304 was expected"
done
echo
echo "Headers on every page: $(echo $names)"
[ "$failures" = 0 ] && echo "All as expected." || { echo "$failures not as expected."; exit 1; }
