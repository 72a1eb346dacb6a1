@echo off
rem Copperbook without a window: copperbook-batch --help lists what it does.
rem Exit code 0: done; 1: a check failed; 2: bad use or bad input.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -Xmx1g -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Dfile.encoding=UTF-8 -jar "%~dp0plugins\@launcher@" -application org.copperbook.batch.app %*
exit /b %ERRORLEVEL%
