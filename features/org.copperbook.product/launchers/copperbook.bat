@echo off
rem Opens the Copperbook window: copperbook.bat [-demo <demo-data folder>]
rem What it keeps is in the folder COPPERBOOK_HOME; if that is not set, in the one the system gives to applications.
setlocal
set KEPT=
set PLACES=
if defined COPPERBOOK_HOME (
  set KEPT="-Dcopperbook.home=%COPPERBOOK_HOME%"
  set PLACES=-data "%COPPERBOOK_HOME%" -configuration "%COPPERBOOK_HOME%\configuration"
)
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
start "" "%JAVAW%" -Xmx1g -Dfile.encoding=UTF-8 %KEPT% -jar "%~dp0plugins\@launcher@" %PLACES% %*
