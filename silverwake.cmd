@echo off
rem Copyright 2026 The Silverwake authors
rem SPDX-License-Identifier: Apache-2.0
rem
rem Starts Silverwake. In the source tree it builds first with Maven when there is no build, or when a source is newer than the build;
rem an unpacked zip needs no Maven, and no Java where it brings its own. A folder or workbook dropped on this file is checked and run,
rem and the window is kept at the end. SILVERWAKE_JAVA_OPTIONS may hold further options of the Java machine, separated by spaces.

rem Windows hands a dropped path without blanks over unquoted and cuts it in two at an ampersand; the line it typed is kept for the program.
setlocal EnableExtensions EnableDelayedExpansion
set "SILVERWAKE_LINE=!CMDCMDLINE!"
set "OWN_WINDOW="
if not "!SILVERWAKE_LINE: /c =!"=="!SILVERWAKE_LINE!" set "OWN_WINDOW=1"
setlocal DisableDelayedExpansion

rem A window of its own and no word at all, or a first word with a backslash, a path and no command: a double click or a drop.
set "DESKTOP="
if not defined OWN_WINDOW goto home
set "FIRST=%~1"
if not defined FIRST set "DESKTOP=--desktop"
if defined FIRST if not "%FIRST:\=%"=="%FIRST%" set "DESKTOP=--desktop"

:home
set "HOME_DIR=%~dp0"
set "CODE=2"
set "KIT=Java"
set "JAVA_EXE=java"
if defined JAVA_HOME set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
set "JAR=%HOME_DIR%program\silverwake.jar"
if exist "%HOME_DIR%program\runtime\bin\java.exe" set "JAVA_EXE=%HOME_DIR%program\runtime\bin\java.exe"
if exist "%HOME_DIR%program\runtime\bin\java.exe" goto program
if exist "%HOME_DIR%pom.xml" set "JAR=%HOME_DIR%cli\target\silverwake.jar"
if exist "%HOME_DIR%pom.xml" set "KIT=a JDK"

"%JAVA_EXE%" -version >nul 2>&1
if errorlevel 1 goto nojava
set "VERSION="
set "MAJOR="
for /f "tokens=3" %%v in ('call "%JAVA_EXE%" -version 2^>^&1 ^| findstr /i /c:" version "') do if not defined VERSION set "VERSION=%%~v"
for /f "tokens=1,2 delims=.-+" %%a in ("%VERSION%") do if "%%a"=="1" (set "MAJOR=%%b") else (set "MAJOR=%%a")
if not defined MAJOR set "MAJOR=0"
if %MAJOR% LSS 17 goto oldjava
if not exist "%HOME_DIR%pom.xml" goto program

rem Exit code 1 means a source or pom is newer than the jar, or there is no build.
powershell -NoProfile -Command "$h=$env:HOME_DIR; $j=$env:JAR; if (-not (Test-Path -LiteralPath $j) -or -not (Test-Path -LiteralPath ($h+'cli\target\lib'))) { exit 1 }; $t=(Get-Item -LiteralPath $j).LastWriteTimeUtc; $f=@(); foreach ($p in 'pom.xml','model\pom.xml','geo\pom.xml','cli\pom.xml') { $f+=Get-Item -LiteralPath ($h+$p) }; foreach ($d in 'model','geo','cli') { $f+=Get-ChildItem -Recurse -LiteralPath ($h+$d+'\src\main') }; if ($f | Where-Object { $_.LastWriteTimeUtc -gt $t } | Select-Object -First 1) { exit 1 }; exit 0"
if not errorlevel 1 goto program
where mvn >nul 2>&1
if errorlevel 1 goto nomaven
echo silverwake: building, a minute or so ... 1>&2
pushd "%HOME_DIR%"
call mvn -B -ntp -q -Dstyle.color=never -DskipTests -Dspotless.check.skip=true package 1>&2
if errorlevel 1 goto nobuild
popd
powershell -NoProfile -Command "(Get-Item -LiteralPath $env:JAR).LastWriteTimeUtc=[DateTime]::UtcNow"

:program
if not exist "%JAR%" goto nojar
"%JAVA_EXE%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xmx1g %SILVERWAKE_JAVA_OPTIONS% -jar "%JAR%" %DESKTOP% %*
set "CODE=%ERRORLEVEL%"
goto end

:nojava
echo silverwake: no Java found; install %KIT%, version 17 or newer, and put it on PATH or in JAVA_HOME 1>&2
goto end
:oldjava
echo silverwake: Java %MAJOR% found, version 17 or newer is needed; install it and put it first on PATH or in JAVA_HOME 1>&2
goto end
:nomaven
echo silverwake: there is no up-to-date build and no Maven to make one; install Maven, version 3.8.7 or newer, and put mvn on PATH 1>&2
goto end
:nobuild
popd
echo silverwake: the build failed; the lines above say why 1>&2
set "CODE=1"
goto end
:nojar
echo silverwake: the folder program is missing beside this file; unpack the whole zip and start it there 1>&2

:end
if not defined DESKTOP exit /b %CODE%
pause
rem Not /b: what Windows cut off at the ampersand would be run as a command.
exit %CODE%
