@echo off
rem Runs Fitworthy on Windows as the script beside it does elsewhere, with the same options; no archive of classes is made.
setlocal
set "app=%~dp0.."
set "jar=%app%\lib\@project.build.finalName@.jar"

rem An image has a Java of its own.
set "java=%app%\java\bin\java.exe"
if not exist "%java%" if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if not exist "%java%" for %%j in (java.exe) do set "java=%%~$PATH:j"
if not exist "%java%" (
    echo fitworthy: no java found; install Java 17 or later, or set JAVA_HOME>&2
    exit /b 70
)

set "jars=%jar%"
rem The commands that print documents need the libraries of lib\print.
for %%c in (print letters handbook counter) do if "%~1"=="%%c" set "jars=%jar%;%app%\lib\print\*"
rem And what serves the counter's page.
for %%c in (counter) do if "%~1"=="%%c" set "jars=%jar%;%app%\lib\print\*;%app%\lib\counter\*"

set "fast=-XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Xlog:disable"
set "short=-XX:TieredStopAtLevel=1 -Djdk.reflect.useNativeAccessorOnly=true"
rem What goes through many sheets, or waits for a person, lives long enough for the second compiler to pay.
for %%c in (batch effect counter) do if "%~1"=="%%c" set "short="
"%java%" %fast% %short% -cp "%jars%" fitworthy.cli.Main %*
exit /b %errorlevel%
