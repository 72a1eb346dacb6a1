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
rem Started apart and minimized: something has to wait for the window, which ends with 23 when it asks to be started again.
if defined COPPERBOOK_WAITS goto again
set COPPERBOOK_WAITS=1
start "Copperbook" /min "%ComSpec%" /d /s /c ""%~f0" %*"
exit /b 0

:again
start "" /wait "%JAVAW%" -Xmx1g -Dfile.encoding=UTF-8 %KEPT% -jar "%~dp0plugins\@launcher@" %PLACES% %*
if "%errorlevel%"=="23" goto again
exit /b %errorlevel%
