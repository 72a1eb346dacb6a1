@echo off
rem Opens the Copperbook window: copperbook.bat [-demo <demo-data folder>] [-data <folder>]
setlocal
set "JAVAW=javaw"
if defined JAVA_HOME set "JAVAW=%JAVA_HOME%\bin\javaw"
if not defined JAVA_HOME (
  where /q javaw
  if errorlevel 1 (
    echo copperbook: no Java found. It needs Java 17 or newer. 1>&2
    exit /b 1
  )
)
rem Started apart, so that no console window stays open behind it.
start "" "%JAVAW%" -Xmx1g -Dfile.encoding=UTF-8 -jar "%~dp0plugins\@launcher@" %*
