# SPDX-License-Identifier: Apache-2.0
# Sourced by tests/run and demo/run: how far a build or a test run has come.

# progress COMMAND...: runs it and, of its lines that count ("[312/640] ...", "12/80 Test ..."), shows where it stands, every ten seconds
# ("312 of 640, about 3 min left"); what failed and every other line is passed on as it is. Returns what the command returned.
progress() {
  local begun=$SECONDS shown=-10 line done all left words
  "$@" 2>&1 | while IFS= read -r line; do
    if ! [[ $line =~ ^[[:space:]]*\[?([0-9]+)/([0-9]+)(\]|[[:space:]]+Test) ]]; then
      [[ $line =~ ^[[:space:]]+Start\ +[0-9]+: ]] || printf '%s\n' "$line"
      continue
    fi
    done=${BASH_REMATCH[1]} all=${BASH_REMATCH[2]}
    [[ ! $line =~ \*\*\* ]] || printf '%s\n' "$line"
    [ $((SECONDS - shown)) -ge 10 ] || continue
    shown=$SECONDS
    left=$(((SECONDS - begun) * (all - done) / (done > 0 ? done : 1)))
    words="about $(((left + 59) / 60)) min left"
    [ $((SECONDS - begun)) -ge 10 ] || words="just begun"
    echo "  $done of $all, $words"
  done
  return "${PIPESTATUS[0]}"
}
