#!/bin/sh
# Opens the Copperbook window: copperbook.command [-demo <demo-data folder>]
# What it keeps is in the folder COPPERBOOK_HOME; if that is not set, in the one the system gives to applications.

here=$(cd -- "$(dirname -- "$0")" && pwd)

java=java
if [ -n "${JAVA_HOME:-}" ]; then java=$JAVA_HOME/bin/java; fi
if ! command -v "$java" >/dev/null 2>&1; then
  echo "copperbook: no Java found. It needs Java 17 or newer." >&2
  exit 1
fi

# -workbooks says where the demo jobs write when there is no window; here there always is one.
left=$#
while [ "$left" -gt 0 ]; do
  case $1 in
    -workbooks)
      shift 2
      left=$((left - 2))
      ;;
    *)
      set -- "$@" "$1"
      shift
      left=$((left - 1))
      ;;
  esac
done

# Cocoa draws on the first thread of the process and on no other.
code=23
while [ "$code" -eq 23 ]; do
  "$java" -XstartOnFirstThread -Xmx1g -Dfile.encoding=UTF-8 ${HOME:+-Duser.home="$HOME"} \
    ${COPPERBOOK_HOME:+-Dcopperbook.home="$COPPERBOOK_HOME"} -jar "$here/plugins/@launcher@" \
    ${COPPERBOOK_HOME:+-data "$COPPERBOOK_HOME" -configuration "$COPPERBOOK_HOME/configuration"} "$@"
  code=$?
done
exit "$code"
