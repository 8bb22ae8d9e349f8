# Sourced by ./run and ./test: a .venv with Turnout and its hashed requirements, made once and again when they change.
# shellcheck shell=bash

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
venv="$root/.venv"

say() { printf '%s\n' "$*" >&2; }

give_up() {
  say "Turnout cannot start: $*"
  exit 1
}

# The newest usable Python, 3.11 or later.
find_python() {
  local name
  for name in python3 python3.14 python3.13 python3.12 python3.11; do
    if command -v "$name" >/dev/null && "$name" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
      command -v "$name"
      return
    fi
  done
  give_up "it needs Python 3.11 or later; found $(python3 --version 2>/dev/null || echo 'no python3'). Install a newer python3 and try again."
}

# What an installed .venv depends on: the requirements, the package's own description, and where it lies.
stamp_of() {
  { cat "$root/$1" "$root/pyproject.toml"; echo "$root"; } | { sha256sum 2>/dev/null || shasum -a 256; } | cut -d ' ' -f 1
}

make_venv() {
  "$venv/bin/python" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null \
    && "$venv/bin/python" -m pip --version >/dev/null 2>&1 && return
  local python
  python=$(find_python) || exit 1
  say "Making .venv with $("$python" --version) …"
  "$python" -m venv --clear "$venv" || give_up "“$python -m venv” failed; on Debian and Ubuntu install python3-venv."
}

# ready REQUIREMENTS: everything named in that file is installed, and Turnout itself.
ready() {
  local wanted mark="$venv/.installed-from-$1"
  wanted=$(stamp_of "$1")
  if [[ -x "$venv/bin/turnout" && -f "$mark" && $(<"$mark") == "$wanted" ]]; then return; fi
  make_venv
  say "Installing from $1 (once; this needs the network) …"
  "$venv/bin/python" -m pip install -qq --disable-pip-version-check --require-hashes -r "$root/$1" \
    || give_up "the packages in $1 could not be installed; the lines above say why."
  "$venv/bin/python" -m pip install -qq --disable-pip-version-check --no-deps --no-build-isolation --editable "$root" \
    || give_up "Turnout itself could not be installed; the lines above say why."
  printf '%s' "$wanted" >"$mark"
}
