# Finds a JDK 17 or newer. Read by ./loomwright and ./check; defines find_jdk and need_maven.
# Its own variables start with jdk_ or real, so that they touch nothing of the reader's.
# POSIX sh, no bash needed.

# Prints the major version of the JDK at $1, or nothing when $1 is not a JDK.
jdk_major() {
  [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] || return 0
  jdk_version=
  if [ -r "$1/release" ]; then
    # Reading this file is much faster than asking java itself.
    jdk_version=$(sed -n 's/^JAVA_VERSION="\{0,1\}\([0-9][0-9]*\).*/\1/p' "$1/release" 2>/dev/null | head -n 1)
  fi
  if [ -z "$jdk_version" ]; then
    jdk_version=$("$1/bin/java" -version 2>&1 | sed -n 's/.*version "\([0-9][0-9]*\).*/\1/p' | head -n 1)
  fi
  echo "$jdk_version"
}

# Follows symbolic links of the file $1 to the real file; prints its path.
real_file() {
  real=$1
  while [ -h "$real" ]; do
    real_link=$(readlink "$real")
    case $real_link in
      /*) real=$real_link ;;
      *) real=$(dirname "$real")/$real_link ;;
    esac
  done
  echo "$(cd "$(dirname "$real")" && pwd -P)/$(basename "$real")"
}

# Sets JDK to the first JDK 17+ of: JAVA_HOME, the java on PATH, the usual folders.
# Without one, says what to install and returns 1.
find_jdk() {
  JDK=
  jdk_seen=
  jdk_on_path=
  if command -v javac >/dev/null 2>&1; then
    jdk_on_path=$(dirname "$(dirname "$(real_file "$(command -v javac)")")")
  fi
  jdk_of_mac=
  if [ -x /usr/libexec/java_home ]; then
    jdk_of_mac=$(/usr/libexec/java_home -v 17+ 2>/dev/null)
  fi
  for jdk_home in "${JAVA_HOME:-}" "$jdk_on_path" "$jdk_of_mac" \
    /usr/lib/jvm/*17* /usr/lib/jvm/*21* /usr/lib/jvm/* /usr/java/* /opt/java/* /opt/jdk* \
    /Library/Java/JavaVirtualMachines/*/Contents/Home "${HOME:-}"/.jdks/*; do
    [ -n "$jdk_home" ] && [ -d "$jdk_home" ] || continue
    jdk_found=$(jdk_major "$jdk_home")
    [ -n "$jdk_found" ] || continue
    if [ "$jdk_found" -ge 17 ] 2>/dev/null; then
      JDK=$jdk_home
      return 0
    fi
    jdk_seen="$jdk_seen $jdk_home ($jdk_found)"
  done
  {
    echo "Loomwright needs a Java Development Kit (JDK), version 17 or newer, and found none."
    [ -z "$jdk_seen" ] || echo "Found, but too old:$jdk_seen"
    echo "Install one and try again:"
    echo "  Debian or Ubuntu:  sudo apt-get install openjdk-17-jdk-headless maven"
    echo "  Fedora:            sudo dnf install java-17-openjdk-devel maven"
    echo "  macOS:             brew install openjdk@17 maven"
    echo "If it is installed in an unusual folder, set JAVA_HOME to that folder."
  } >&2
  return 1
}

# Says what to install when Maven is missing and returns 1.
need_maven() {
  command -v mvn >/dev/null 2>&1 && return 0
  {
    echo "Loomwright is built with Maven (version 3.6.3 or newer), and there is no mvn on the PATH."
    echo "Install it and try again:"
    echo "  Debian or Ubuntu:  sudo apt-get install maven"
    echo "  Fedora:            sudo dnf install maven"
    echo "  macOS:             brew install maven"
  } >&2
  return 1
}
