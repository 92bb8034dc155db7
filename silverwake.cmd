@echo off
rem Copyright 2026 The Silverwake authors
rem SPDX-License-Identifier: Apache-2.0
rem
rem Starts Silverwake. Builds it first with Maven when there is no build, or when a source is newer than the build.
rem SILVERWAKE_JAVA_OPTIONS may hold further options of the Java machine, separated by spaces.
setlocal EnableExtensions DisableDelayedExpansion

set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%cli\target\silverwake.jar"

set "JAVA_EXE=java"
if defined JAVA_HOME set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
"%JAVA_EXE%" -version >nul 2>&1
if errorlevel 1 (
    echo silverwake: no Java found; install a JDK, version 17 or newer, and put it on PATH or in JAVA_HOME 1>&2
    exit /b 2
)
set "VERSION="
for /f "tokens=3" %%v in ('call "%JAVA_EXE%" -version 2^>^&1 ^| findstr /i /c:" version "') do if not defined VERSION set "VERSION=%%~v"
for /f "tokens=1,2 delims=.-+" %%a in ("%VERSION%") do if "%%a"=="1" (set "MAJOR=%%b") else (set "MAJOR=%%a")
if not defined MAJOR set "MAJOR=0"
if %MAJOR% LSS 17 (
    echo silverwake: Java %MAJOR% found, version 17 or newer is needed; install it and put it first on PATH or in JAVA_HOME 1>&2
    exit /b 2
)

rem Exit code 1 means a source or pom is newer than the jar, or there is no build.
powershell -NoProfile -Command "$h=$env:HOME_DIR; $j=$env:JAR; if (-not (Test-Path -LiteralPath $j) -or -not (Test-Path -LiteralPath ($h+'cli\target\lib'))) { exit 1 }; $t=(Get-Item -LiteralPath $j).LastWriteTimeUtc; $f=@(); foreach ($p in 'pom.xml','model\pom.xml','geo\pom.xml','cli\pom.xml') { $f+=Get-Item -LiteralPath ($h+$p) }; foreach ($d in 'model','geo','cli') { $f+=Get-ChildItem -Recurse -LiteralPath ($h+$d+'\src\main') }; if ($f | Where-Object { $_.LastWriteTimeUtc -gt $t } | Select-Object -First 1) { exit 1 }; exit 0"
if not errorlevel 1 goto run

where mvn >nul 2>&1
if errorlevel 1 (
    echo silverwake: there is no up-to-date build and no Maven to make one; install Maven, version 3.8.7 or newer, and put mvn on PATH 1>&2
    exit /b 2
)
echo silverwake: building, a minute or so ... 1>&2
pushd "%HOME_DIR%"
call mvn -B -ntp -q -Dstyle.color=never -DskipTests -Dspotless.check.skip=true package 1>&2
if errorlevel 1 (
    popd
    echo silverwake: the build failed; the lines above say why 1>&2
    exit /b 1
)
popd
powershell -NoProfile -Command "(Get-Item -LiteralPath $env:JAR).LastWriteTimeUtc=[DateTime]::UtcNow"

:run
"%JAVA_EXE%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xmx1g %SILVERWAKE_JAVA_OPTIONS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
