@echo off
rem Copperbook without a window: copperbook-batch --help lists what it does.
rem Exit code 0: done; 1: a check failed; 2: bad use or bad input.
rem What it keeps is in the folder COPPERBOOK_HOME; if that is not set, in the one the system gives to applications.
setlocal
set KEPT=
set PLACES=
if defined COPPERBOOK_HOME (
  set KEPT="-Dcopperbook.home=%COPPERBOOK_HOME%"
  set PLACES=-data "%COPPERBOOK_HOME%" -configuration "%COPPERBOOK_HOME%\configuration"
)
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -Xmx1g -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Dfile.encoding=UTF-8 %KEPT% -jar "%~dp0plugins\@launcher@" -application org.copperbook.batch.app %PLACES% %*
exit /b %ERRORLEVEL%
