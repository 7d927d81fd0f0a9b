# Shared by the long tests: an invented month of any length, the service as a process, and its audits over HTTP.
set -uo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
. "$root/tests/long/needs.sh"
needs curl gzip
port=${PORT:-5097}
base=http://127.0.0.1:$port
program=$root/src/ComplianceApi/bin/Release/net10.0/ComplianceApi.dll
work=$(mktemp -d)

# Ends what this script itself started, by process id, and nothing else.
started=()
finish() {
  for pid in "${started[@]:-}"; do [ -n "$pid" ] && kill -9 "$pid" 2>/dev/null; done
  [ -d "$work/pg" ] && postgresql stop
  rm -rf "$work"
}
trap finish EXIT

build() { dotnet build "$root/src/ComplianceApi" --configuration Release --nologo --verbosity quiet || exit 1; }

# month N FILE: the example record N times with ids of its own; one in ten measured differently, one in 97 unusable.
month() {
  tr -d '\n' < "$root/rules/example-record.json" | awk -v n="$1" '{
    gsub(/%/, "%%")
    licenceFirst = index($0, "\"7001234\"") < index($0, "\"QB-25-004711\"")
    sub(/"HB-0001"/, "\"M-%07d\""); sub(/"QB-25-004711"/, "\"S-%07d\""); sub(/"7001234"/, "\"70000%02d\"")
    for (co = 0; co < 3; co++)
      for (coal = 0; coal < 2; coal++) {
        r = $0
        if (co) sub(/"coPpm": *[0-9.]+/, "\"coPpm\": " (co == 1 ? 400 : 2000), r)
        if (coal) sub(/"naturalGas"/, "\"coal\"", r)
        form[co, coal] = r "\n"
      }
    for (i = 1; i <= n; i++) {
      f = form[i % 30 == 10 ? 1 : i % 30 == 20 ? 2 : 0, i % 97 == 0]
      if (licenceFirst) printf f, i, i % 40, i; else printf f, i, i, i % 40
    } }' > "$2"
}

# serve LOG PORT ARGS...: starts the service; its process id is left in $pid.
serve() {
  local log=$1 at=$2; shift 2
  dotnet "$program" --urls "http://127.0.0.1:$at" --Logging:LogLevel:Default=Error --Store:Create=true "$@" >"$log" 2>&1 &
  pid=$!
  started+=("$pid")
}

ready() {
  for _ in $(seq 300); do curl -s -o /dev/null --max-time 2 "$1/health/ready" && return 0; sleep 0.1; done
  echo "the service at $1 does not get ready"; exit 1
}

# post FILE: stores an audit; its path is left in $job, its id in $audit.
post() {
  audit=$(curl -s --max-time 3000 -X POST -T "$1" -H 'Content-Type: application/x-ndjson' "$base/v1/audits" \
    | grep -o '"auditId":"[^"]*"' | cut -d'"' -f4)
  [ -n "$audit" ] || { echo "the audit was not accepted"; exit 1; }
  job=/v1/audits/$audit
}

# keep FILE: stores an evaluation of each record, over a few connections; those that are refused are left out. Needs python3.
keep() {
  python3 - "${base#http://}" "$1" <<'PY'
import concurrent.futures, http.client, sys
records = open(sys.argv[2], "rb").read().splitlines()
def post(part):
    service = http.client.HTTPConnection(sys.argv[1])
    for record in part:
        service.request("POST", "/v1/evaluations", record, {"Content-Type": "application/json"})
        answer = service.getresponse()
        answer.read()
        if answer.status not in (201, 422): sys.exit(f"a record was answered with {answer.status}")
with concurrent.futures.ThreadPoolExecutor() as threads: list(threads.map(post, [records[i::8] for i in range(8)]))
PY
}

# low FILE: every third record gets a cold fill pressure that is below the limit of the preview.
low() { sed -i -E '0~3s/"coldFillBar": *[0-9.]+/"coldFillBar": 1.0/' "$1"; }

# preview: looks at what a tighter limit of the cold fill pressure would change in all that is kept; its path is left in $job.
preview() {
  job=$(curl -s --max-time 3000 -o /dev/null -w '%header{location}' -H 'Content-Type: application/json' "$base/v1/rule-changes/preview" \
    -d '{"overrides":[{"id":"cold-fill","what":"cold fill","min":1.1,"max":1.5,"unit":"bar","resolution":0.1,"origin":"deployer","source":"made up","verified":true,"who":"a test","why":"a test"}]}')
  [ -n "$job" ] || { echo "the preview was not accepted"; exit 1; }
}

state() { curl -s --max-time 10 "$base$job" | grep -o '"state":"[a-z]*"' | cut -d'"' -f4; }

# completed SECONDS: waits for the end of the audit or preview.
completed() {
  local until=$((SECONDS + $1))
  while [ "$(state)" != completed ]; do
    [ "$(state)" = failed ] || [ $SECONDS -gt $until ] && { echo "state '$(state)' after $1 s"; exit 1; }
    sleep 0.5
  done
}

number() { curl -s "$base$job" | grep -o "\"$1\":[0-9.]*" | head -1 | cut -d: -f2; }

# watch_memory PID FILE: writes the resident memory of the process in MiB into the file twice a second, until it ends.
watch_memory() { while awk '/VmRSS/ { print int($2 / 1024) }' "/proc/$1/status" 2>/dev/null; do sleep 0.5; done > "$2" & }

# typical_mib FILE: the median of what was written there. What grows with the length of the work lifts it; a moment before a collection does not.
typical_mib() { sort -n "$1" | awk '{ m[NR] = $1 } END { print m[int((NR + 1) / 2)] }'; }

peak_mib() { echo $(($(grep VmHWM "/proc/$1/status" | tr -dc 0-9) / 1024)); }

# A PostgreSQL of this script alone, from the system's package; its connection string is left in $connection.
programs=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -1)
has_postgresql() { [ -n "$programs" ] || { echo "skipped: PostgreSQL is not installed (apt-get install postgresql)"; [ "${CI:-}" != true ]; return 1; }; }
as_postgres() { if [ "$(id -u)" = 0 ]; then (cd /tmp && runuser -u postgres -- "$@"); else "$@"; fi; }
postgresql() { as_postgres "$programs/pg_ctl" -D "$work/pg/data" -l "$work/pg/log" -w -m immediate -o "$pg_options" "$1" >/dev/null; }
new_postgresql() {
  mkdir "$work/pg"; chmod o+x "$work"
  [ "$(id -u)" = 0 ] && chown postgres "$work/pg"
  pg_options="-p ${PG_PORT:-55497} -c listen_addresses=127.0.0.1 -c unix_socket_directories=$work/pg -c max_connections=200"
  as_postgres "$programs/initdb" -D "$work/pg/data" -A trust -U tests -E UTF8 --locale=C.UTF-8 >/dev/null || exit 1
  postgresql start || exit 1
  connection="Host=127.0.0.1;Port=${PG_PORT:-55497};Username=tests;Database=postgres"
}
new_database() { as_postgres "$programs/createdb" -h 127.0.0.1 -p "${PG_PORT:-55497}" -U tests "$1"; connection="Host=127.0.0.1;Port=${PG_PORT:-55497};Username=tests;Database=$1"; }
