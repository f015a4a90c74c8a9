# SPDX-License-Identifier: Apache-2.0
# Sourced by tests/run, demo/run: what is needed from Debian 12, Debian 13 or Ubuntu 24.04 as packaged, and installing what is missing.
# DEVELOPERS.md says what each is for.
# The house formats and lints by clang 14; where it is not packaged any more, by the one that is.
clang_tools=(clang-14 clang-format-14 clang-tidy-14)
apt-cache policy clang-14 2>/dev/null | grep -q 'Candidate: [0-9]' || dpkg-query -W clang-14 >/dev/null 2>&1 || clang_tools=(clang clang-format clang-tidy)

packages_build=(
  g++ cmake ninja-build pkg-config ccache git ca-certificates
  libsodium-dev libsqlite3-dev libzstd-dev libcsv-dev libcli11-dev libexpected-dev rapidjson-dev liblemon-dev libzxing-dev
  qt6-base-dev qt6-base-dev-tools qt6-declarative-dev qt6-declarative-dev-tools qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
  qt6-connectivity-dev libqt6bluetooth6 libqt6nfc6 qt6-multimedia-dev
  libgl1-mesa-dev libxkbcommon-dev mold
  qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript qml6-module-qtquick qml6-module-qtquick-controls
  qml6-module-qtquick-dialogs qml6-module-qtquick-layouts qml6-module-qtquick-shapes qml6-module-qtquick-templates qml6-module-qtquick-window
  qml6-module-qtcore qml6-module-qt-labs-folderlistmodel qt6-qpa-plugins
)
packages_tests=(
  catch2 librapidcheck-dev libbenchmark-dev qml6-module-qttest
  "${clang_tools[@]}"
  python3 python3-scipy r-base-core r-cran-mice units zint python3-zxing-cpp python3-pil sqlite3 xvfb util-linux dbus poppler-utils
  at-spi2-core python3-pyatspi xdotool
)

# install_missing PACKAGE...
install_missing() {
  local missing=() package
  for package in "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  if ! command -v apt-get >/dev/null; then
    echo "These packages of Debian 12 are needed and there is no apt-get to install them: ${missing[*]}" >&2
    return 1
  fi
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      echo "Run this as root, or install sudo; these packages are needed: ${missing[*]}" >&2
      return 1
    fi
    as_root=(sudo)
  fi
  echo "Installing from the system's package sources: ${missing[*]}"
  "${as_root[@]}" apt-get update -q >/dev/null
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}" >/dev/null
}
