# needs TOOL...: ends the script before it measures anything where a program is missing; a row of zeros would be taken for a measurement.
needs() {
  local tool missing=()
  for tool in "$@"; do command -v "$tool" >/dev/null || missing+=("$tool"); done
  [ ${#missing[@]} = 0 ] || { echo "$0 needs ${missing[*]}, which this machine does not have."; exit 2; }
}
needs dotnet
