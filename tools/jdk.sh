# shellcheck shell=bash
# Sourced by ./rundlauf and ./check: finds a JDK, or says in plain words what was found and what to install.
# Sets JAVA_HOME (exported) and JAVA_VERSION_FOUND. Reads the `release` file of a JDK where it can: starting
# `java -version` for each one would cost more than the command itself.

readonly OLDEST_JAVA=17
JAVA_SEEN=()

# java_major HOME: prints the feature release (8, 11, 17, …), nothing when it is no Java home.
java_major() {
  local line version=""
  if [[ -r $1/release ]]; then
    while IFS= read -r line || [[ -n $line ]]; do
      [[ $line == JAVA_VERSION=* ]] && version=${line#JAVA_VERSION=}
    done <"$1/release"
  fi
  if [[ -z $version && -x $1/bin/java ]]; then
    version=$("$1/bin/java" -version 2>&1 | sed -n 's/.* version "\([^"]*\)".*/\1/p' | head -n 1)
  fi
  version=${version//\"/}
  version=${version//$'\r'/}
  version=${version#1.}
  printf '%s' "${version%%[!0-9]*}"
}

# java_suits HOME LABEL: true for a JDK new enough with a compiler; else notes why not in JAVA_SEEN.
java_suits() {
  local major
  if [[ ! -x $1/bin/java ]]; then
    JAVA_SEEN+=("$2 has no bin/java")
    return 1
  fi
  major=$(java_major "$1")
  if [[ -z $major ]]; then
    JAVA_SEEN+=("$2 does not tell its version")
  elif ((major < OLDEST_JAVA)); then
    JAVA_SEEN+=("$2 is Java $major")
  elif [[ ! -x $1/bin/javac ]]; then
    JAVA_SEEN+=("$2 is Java $major without its compiler, javac")
  else
    JAVA_VERSION_FOUND=$major
    return 0
  fi
  return 1
}

# resolved FILE: the file behind a chain of symbolic links.
resolved() {
  local file=$1 target
  while [[ -L $file ]]; do
    target=$(readlink "$file")
    [[ $target == /* ]] || target=${file%/*}/$target
    file=$target
  done
  printf '%s' "$file"
}

# java_on_path: prints the home of the java on the PATH.
java_on_path() {
  local java
  java=$(type -P java) || return 1
  java=$(resolved "$java")
  if [[ -x /usr/libexec/java_home && $java == /usr/bin/java ]]; then
    /usr/libexec/java_home -v "$OLDEST_JAVA+" 2>/dev/null # macOS: /usr/bin/java only forwards
    return
  fi
  printf '%s' "${java%/bin/java}"
}

# lowest_jdk: the lowest suitable JDK in the usual folders, in LOWEST_JDK.
lowest_jdk() {
  local home best=""
  LOWEST_JDK=""
  for home in /usr/lib/jvm/* /usr/java/* /opt/java/* /opt/jdk* "$HOME"/.sdkman/candidates/java/* \
    "$HOME"/.jdks/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    [[ -d $home && ! -L $home && -x $home/bin/java ]] || continue
    if java_suits "$home" "$home" && { [[ -z $best ]] || ((JAVA_VERSION_FOUND < best)); }; then
      best=$JAVA_VERSION_FOUND
      LOWEST_JDK=$home
    fi
  done
  [[ -n $LOWEST_JDK ]] && JAVA_VERSION_FOUND=$best
}

# find_jdk: JAVA_HOME if it suits, else the one on the PATH, else the lowest that suits; false when none does.
find_jdk() {
  local home
  HOME=${HOME:-/}
  if [[ -n ${JAVA_HOME:-} ]] && java_suits "$JAVA_HOME" "JAVA_HOME=$JAVA_HOME"; then
    export JAVA_HOME
    return 0
  fi
  home=$(java_on_path) || home=""
  if [[ -n $home ]] && java_suits "$home" "$home (on the PATH)"; then
    export JAVA_HOME=$home
    return 0
  fi
  lowest_jdk || return 1
  export JAVA_HOME=$LOWEST_JDK
}

# jdk_install_line: the one line that installs a JDK here.
jdk_install_line() {
  if type -P apt-get >/dev/null; then
    printf 'sudo apt-get install openjdk-17-jdk-headless'
  elif type -P dnf >/dev/null; then
    printf 'sudo dnf install java-17-openjdk-devel'
  elif type -P pacman >/dev/null; then
    printf 'sudo pacman -S jdk17-openjdk'
  elif type -P brew >/dev/null; then
    printf 'brew install openjdk@17'
  else
    printf 'install a JDK %s or newer with the means of your system' "$OLDEST_JAVA"
  fi
}

# jdk_missing_sentence: what was found and what to do.
jdk_missing_sentence() {
  local seen
  if ((${#JAVA_SEEN[@]} == 0)); then
    seen="no Java was found"
  else
    seen="found only: $(printf '%s; ' "${JAVA_SEEN[@]}")"
    seen=${seen%; }
  fi
  printf 'a JDK %s or newer with its compiler is needed; %s. To install one: %s\n' \
    "$OLDEST_JAVA" "$seen" "$(jdk_install_line)"
}

# utf8_locale: file names and messages need UTF-8 whatever the caller's locale is.
utf8_locale() {
  local locale=${LC_ALL:-${LC_CTYPE:-${LANG:-}}}
  case $locale in
    *[Uu][Tt][Ff]-8* | *[Uu][Tt][Ff]8*) ;;
    *) export LC_ALL=C.UTF-8 ;;
  esac
}

# maven FOLDER ARGUMENT…: Maven on the PATH, else the wrapper; MAVEN_ARGS is passed on once, whatever the version.
maven() {
  local folder=$1 command passed=()
  shift
  command=$(type -P mvn) || command=$folder/mvnw
  read -r -a passed <<<"${MAVEN_ARGS:-}" || true
  (cd "$folder" && env -u MAVEN_ARGS "$command" -B ${passed[@]+"${passed[@]}"} "$@")
}
